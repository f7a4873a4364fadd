#include "facts/substitutes.h"

#include "base/words.h"
#include "colour/difference.h"
#include "facts/swatches.h"

#include <algorithm>
#include <array>

namespace dyeleaf {

namespace {

enum class Answer { yes, no, unknown };

Answer answer(bool is_so) {
    return is_so ? Answer::yes : Answer::no;
}

Answer is_in_stock(const Dye& dye) {
    if (dye.status == DyeStatus::discontinued) return Answer::no;
    if (!dye.in_stock) return Answer::unknown;
    if (const auto* mass = std::get_if<Mass>(&*dye.in_stock)) return answer(*mass > grams(0));
    return answer(std::get<bool>(*dye.in_stock));
}

Answer fulfils(const Dye& dye, Wish wish, const Wishes& wishes) {
    switch (wish) {
    case Wish::line: return answer(wishes.line.empty() || lower_case(dye.line) == lower_case(wishes.line));
    case Wish::dye_class:
        if (wishes.dye_class.empty()) return Answer::yes;
        return dye.dye_class ? answer(is_of_class(*dye.dye_class, wishes.dye_class)) : Answer::unknown;
    case Wish::holds_together:
        if (!wishes.holds_together) return Answer::yes;
        return dye.breaks_into ? answer(dye.breaks_into->empty()) : Answer::unknown;
    case Wish::speckles:
        if (!wishes.speckles) return Answer::yes;
        return dye.speckle ? answer(dye.speckle->grade <= *wishes.speckles) : Answer::unknown;
    case Wish::in_stock: return wishes.in_stock ? is_in_stock(dye) : Answer::yes;
    }
    return Answer::unknown;
}

constexpr std::array all_wishes = {Wish::line, Wish::dye_class, Wish::holds_together, Wish::speckles, Wish::in_stock};

bool passes(const Dye& dye, const Wishes& wishes, std::vector<LeftOut>& left_out) {
    for (const Wish wish : all_wishes) {
        const Answer given = fulfils(dye, wish, wishes);
        if (given == Answer::yes) continue;
        auto entry = std::ranges::find(left_out, wish, &LeftOut::wish);
        if (entry == left_out.end()) entry = left_out.insert(entry, {wish});
        ++(given == Answer::no ? entry->known : entry->unknown);
        return false;
    }
    return true;
}

double ratio(Percent a, Percent b) {
    return std::max(a, b) / std::min(a, b);
}

bool are_alike(Percent a, Percent b) {
    constexpr double rounding = 1e-9;
    return ratio(a, b) <= like_depth + rounding;
}

// Of several at one depth the last recorded with a colour counts, as on cards.
std::vector<const Swatch*> swatches_to_match(const Wanted& wanted) {
    std::vector<const Swatch*> result;
    for (const Swatch* swatch : swatches_in_order(*wanted.dye)) {
        if (!swatch->colour || (wanted.base != nullptr && swatch->base.value != wanted.base->id.value)) continue;
        if (wanted.depth && swatch != swatch_at(*wanted.dye, *wanted.depth, swatch->base.value)) continue;
        if (swatch == swatch_at(*wanted.dye, swatch->depth, swatch->base.value)) result.push_back(swatch);
    }
    return result;
}

// The nearest in depth, the last recorded of equal ones; null where there is none.
const Swatch* like_swatch(const Dye& dye, const Swatch& wanted) {
    const Swatch* best = nullptr;
    for (const Swatch& swatch : dye.swatches) {
        const bool is_like = swatch.base.value == wanted.base.value && are_alike(swatch.depth, wanted.depth);
        if (!is_like || !swatch.colour) continue;
        if (best == nullptr || ratio(swatch.depth, wanted.depth) <= ratio(best->depth, wanted.depth)) best = &swatch;
    }
    return best;
}

// The mean of one side of all pairs.
Lab mean(const std::vector<LikePair>& pairs, const Swatch* LikePair::*side) {
    Lab sum;
    for (const LikePair& pair : pairs) {
        const Lab one = lab_of((pair.*side)->colour->value);
        sum = {sum.lightness + one.lightness, sum.a + one.a, sum.b + one.b};
    }
    const auto count = static_cast<double>(pairs.size());
    return {sum.lightness / count, sum.a / count, sum.b / count};
}

bool both_measured(const LikePair& pair) {
    return pair.wanted->colour_source == ColourSource::instrument &&
           pair.found->colour_source == ColourSource::instrument;
}

std::optional<Substitute> compared(const Dye& dye, const std::vector<const Swatch*>& wanted, const Dye& original,
                                   const LotLimits& limits) {
    Substitute result;
    result.dye = &dye;
    for (const Swatch* swatch : wanted) {
        const Swatch* found = like_swatch(dye, *swatch);
        if (found == nullptr) continue;
        const double difference = delta_e_2000(lab_of(swatch->colour->value), lab_of(found->colour->value));
        result.pairs.push_back({swatch, found, difference});
        result.delta_e_2000 += difference;
    }
    if (result.pairs.empty()) return std::nullopt;
    result.delta_e_2000 /= static_cast<double>(result.pairs.size());
    const Lab of_wanted = mean(result.pairs, &LikePair::wanted);
    const Lab of_found = mean(result.pairs, &LikePair::found);
    result.leaning = leaning(of_wanted, of_found);
    result.family = hue_family(of_found);
    result.wanted_family = hue_family(of_wanted);
    result.is_measured =
        dye.fluorescent != true && original.fluorescent != true && std::ranges::all_of(result.pairs, both_measured);
    result.match = judge(result.delta_e_2000, result.is_measured, limits);
    return result;
}

// Whether a swatch of the dye is on the base of one of those, and is as `is_fit` asks beside it.
template <class Fit> bool has_beside(const Dye& dye, const std::vector<const Swatch*>& wanted, const Fit& is_fit) {
    return std::ranges::any_of(dye.swatches, [&](const Swatch& one) {
        return std::ranges::any_of(
            wanted, [&](const Swatch* other) { return one.base.value == other->base.value && is_fit(one, *other); });
    });
}

Lack lack_of(const Dye& dye, const std::vector<const Swatch*>& wanted) {
    if (dye.swatches.empty()) return Lack::never_swatched;
    const auto is_like = [](const Swatch& one, const Swatch& other) { return are_alike(one.depth, other.depth); };
    if (has_beside(dye, wanted, is_like)) return Lack::without_colour;
    const auto is_there = [](const Swatch&, const Swatch&) { return true; };
    return has_beside(dye, wanted, is_there) ? Lack::at_other_depths : Lack::on_other_bases;
}

} // namespace

CodeDifference hazard_difference(const Dye& wanted, const Dye& dye) {
    const auto codes = [](const Dye& one) {
        std::vector<std::string> result;
        if (!one.hazards) return result;
        for (const Hazard& hazard : *one.hazards)
            add_once(result, hazard.code);
        return result;
    };
    const auto without = [](std::vector<std::string> some, const std::vector<std::string>& others) {
        std::erase_if(some, [&](const std::string& code) { return std::ranges::find(others, code) != others.end(); });
        return some;
    };
    return {without(codes(dye), codes(wanted)), without(codes(wanted), codes(dye))};
}

bool is_of_class(const std::string& dye_class, const std::string& wanted) {
    const std::string whole = lower_case(dye_class);
    const std::string begin = lower_case(wanted);
    return whole == begin || whole.starts_with(begin + ",");
}

Substitutes find_substitutes(const Records& records, const Wanted& wanted, const Wishes& wishes) {
    Substitutes result{swatches_to_match(wanted), {}, {}, {}};
    for (const Dye& dye : records.dyes) {
        if (dye.id.value == wanted.dye->id.value || !passes(dye, wishes, result.left_out)) continue;
        if (auto one = compared(dye, result.wanted, *wanted.dye, records.studio.lot_limits)) {
            result.ranked.push_back(std::move(*one));
        } else {
            result.others.push_back({&dye, lack_of(dye, result.wanted)});
        }
    }
    std::ranges::stable_sort(result.ranked, {}, &Substitute::delta_e_2000);
    std::ranges::sort(result.left_out, {}, &LeftOut::wish);
    return result;
}

} // namespace dyeleaf
