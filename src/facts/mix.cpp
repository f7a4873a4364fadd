#include "facts/mix.h"

#include "facts/hazards.h"
#include "facts/names.h"
#include "facts/rounding.h"

#include <algorithm>
#include <cmath>

namespace dyeleaf {

namespace {

// A jar is taken to be filled to two thirds: it needs 30 to 40 % of head space to mix (common practice).
constexpr double filled = 2.0 / 3.0;

// Past 2 % of itself a change of strength is worth a word (common practice).
constexpr double slight = 0.02;

// An estimated mass is not stated more finely than this once it is at least `coarse_from` (our own figures).
constexpr Mass coarse_step = grams(1);
constexpr Mass coarse_from = grams(10);

using Parts = std::vector<MixPart>;

template <class Number> double sum(const Parts& parts, Number number) {
    double total = 0;
    for (const MixPart& part : parts)
        total += number(part);
    return total;
}

bool all_weighed(const Parts& parts) {
    return std::ranges::all_of(parts, [](const MixPart& part) { return part.weighed.has_value(); });
}

bool all_dense(const Parts& parts) {
    return std::ranges::all_of(parts, [](const MixPart& part) { return part.bulk.has_value(); });
}

// Each part's share of the sum of these numbers; left open where there is nothing to share.
template <class Number> void share_by(Parts& parts, Number number) {
    const double whole = sum(parts, number);
    if (whole <= 0) return;
    for (MixPart& part : parts)
        part.share = percent(100 * number(part) / whole);
}

bool all_shared(const Parts& parts) {
    return std::ranges::all_of(parts, [](const MixPart& part) { return part.share.has_value(); });
}

Percent dye_share(const Parts& parts) {
    return percent(sum(parts, [](const MixPart& part) { return part.is_dye ? part.share->number() : 0; }));
}

// Powders lie side by side: a gram of the mix takes up what its parts take up. Packing is left out of account.
Density bulk_of(const Parts& parts) {
    const double volume_of_gram =
        sum(parts, [](const MixPart& part) { return part.share->number() / 100 / part.bulk->number(); });
    return grams_per_millilitre(1 / volume_of_gram);
}

// Spoons fill a jar in their own proportions; else powder takes up what its bulk density says.
void find_volumes(Mix& mix, const MixAmount& amount) {
    const bool spooned = mix.basis == Basis::volume && amount.holds && !amount.batch && !all_weighed(mix.parts);
    const double parts = sum(mix.parts, [](const MixPart& part) { return part.parts; });
    for (MixPart& part : mix.parts) {
        if (spooned && parts > 0) {
            part.volume = *amount.holds * (filled * part.parts / parts);
        } else if (part.mass && part.bulk) {
            part.volume = *part.mass / *part.bulk;
        }
    }
}

void portion(Parts& parts, Mass whole, Mass step, bool estimated) {
    for (MixPart& part : parts) {
        const Mass exact = whole * (part.share->number() / 100);
        part.mass = rounded_to(exact, estimated && exact >= coarse_from ? std::max(step, coarse_step) : step);
    }
}

Mix with_masses(std::vector<MixPart> parts, Basis basis, const MixAmount& amount) {
    Mix mix;
    mix.parts = std::move(parts);
    mix.basis = basis;
    mix.total = amount.batch;
    const bool weighed = !mix.parts.empty() && all_weighed(mix.parts);
    if (weighed) {
        share_by(mix.parts, [](const MixPart& part) { return part.weighed->number(); });
    } else if (basis == Basis::weight) {
        share_by(mix.parts, [](const MixPart& part) { return part.parts; });
    } else if (all_dense(mix.parts)) {
        share_by(mix.parts, [](const MixPart& part) { return part.parts * part.bulk->number(); });
        mix.shares_estimated = true;
    }
    if (mix.parts.empty() || !all_shared(mix.parts)) return mix;
    mix.strength = mix.intended_strength = dye_share(mix.parts);

    if (weighed) {
        for (MixPart& part : mix.parts)
            part.mass = part.weighed;
    } else if (amount.batch) {
        mix.masses_estimated = mix.shares_estimated;
        portion(mix.parts, *amount.batch, amount.scale_step, mix.masses_estimated);
    } else if (amount.holds && all_dense(mix.parts)) {
        mix.masses_estimated = true;
        portion(mix.parts, *amount.holds * filled * bulk_of(mix.parts), amount.scale_step, true);
    } else {
        return mix;
    }

    const double total = sum(mix.parts, [](const MixPart& part) { return part.mass->number(); });
    if (weighed || !amount.batch) {
        mix.total = grams(total);
        mix.total_estimated = mix.masses_estimated;
    }
    // What stood on the scale decides; an estimate changes nothing.
    if (!mix.masses_estimated && total > 0) {
        share_by(mix.parts, [](const MixPart& part) { return part.mass->number(); });
        mix.strength = dye_share(mix.parts);
    }
    return mix;
}

Parts parts_of(const Records& records, const Jar& jar, const std::vector<Part>& recorded) {
    Parts parts;
    for (const Part& part : recorded) {
        MixPart mixed;
        mixed.is_dye = part.is_dye;
        mixed.parts = part.parts;
        mixed.weighed = part.mass;
        if (part.is_dye) {
            const Dye& dye = records.dye(part.id.value);
            mixed.name = distinct_name(records, dye);
            mixed.bulk = dye.bulk_density;
        } else {
            const Ingredient& ingredient = records.ingredient(part.id.value);
            // Which salt it is, where the jar says so.
            mixed.name = is_plain_salt(ingredient) && jar.salt ? *jar.salt : ingredient.name;
            mixed.bulk = ingredient.bulk_density;
        }
        parts.push_back(std::move(mixed));
    }
    return parts;
}

double share_of(const Mix& mix, const std::string& name) {
    const auto part = std::ranges::find(mix.parts, name, &MixPart::name);
    return part == mix.parts.end() || !part->share ? 0 : part->share->number() / 100;
}

// What is in the jar when nobody can say how much of it was there before.
Mix of_unknown_strength(Mix mix) {
    mix.strength = mix.intended_strength = std::nullopt;
    mix.total = std::nullopt;
    for (MixPart& part : mix.parts)
        part.share = {}, part.mass = {}, part.volume = {};
    return mix;
}

} // namespace

Mix work_out(std::vector<MixPart> parts, Basis basis, const MixAmount& amount) {
    Mix mix = with_masses(std::move(parts), basis, amount);
    find_volumes(mix, amount);
    return mix;
}

Mix topped_up(const Mix& in_jar, Mass left, const Mix& added, Mass added_mass, Mass scale_step) {
    Mix mix = of_unknown_strength(in_jar);
    mix.total = left + added_mass;
    mix.masses_estimated = mix.total_estimated = false;
    if (!in_jar.strength || !added.strength) return mix;
    // Grams that follow from shares by volume are no surer than those.
    mix.shares_estimated = mix.masses_estimated = in_jar.shares_estimated || added.shares_estimated;
    mix.basis = mix.shares_estimated ? Basis::volume : Basis::weight;
    for (MixPart& part : mix.parts) {
        const Mass exact = left * share_of(in_jar, part.name) + added_mass * share_of(added, part.name);
        part.mass = part.weighed = rounded_to(exact, scale_step);
        part.parts = part.mass->number();
        part.share = percent(100 * (exact / *mix.total));
        if (part.bulk) part.volume = *part.mass / *part.bulk;
    }
    mix.strength = mix.intended_strength = dye_share(mix.parts);
    return mix;
}

Mix first_filling(const Records& records, const Jar& jar) {
    return work_out(parts_of(records, jar, jar.parts), jar.basis, {jar.batch, jar.holds, records.studio.scale_step});
}

Mix mix_added(const Records& records, const Jar& jar, const TopUp& top_up) {
    const std::vector<Part>& parts = top_up.parts.empty() ? jar.parts : top_up.parts;
    return work_out(parts_of(records, jar, parts), jar.basis, {std::nullopt, std::nullopt, records.studio.scale_step});
}

std::vector<Mix> mixes_of(const Records& records, const Jar& jar) {
    std::vector<Mix> mixes{first_filling(records, jar)};
    bool as_first_filled = true;
    for (const TopUp& top_up : jar.topped_up) {
        Mix mix = mixes.back();
        if (!as_first_filled || !top_up.parts.empty()) {
            as_first_filled = false;
            const bool weighed = top_up.left && top_up.added;
            mix = weighed ? topped_up(mix, *top_up.left, mix_added(records, jar, top_up), *top_up.added,
                                      records.studio.scale_step)
                          : of_unknown_strength(std::move(mix));
        }
        mixes.push_back(std::move(mix));
    }
    return mixes;
}

Mix mix_of(const Records& records, const Jar& jar) {
    return mixes_of(records, jar).back();
}

std::optional<Percent> fill_of(const Mix& mix, Volume holds) {
    Volume total;
    for (const MixPart& part : mix.parts) {
        if (!part.volume) return std::nullopt;
        total = total + *part.volume;
    }
    return percent(100 * (total / holds));
}

bool rounding_shows(const Mix& mix) {
    if (!mix.strength || !mix.intended_strength || *mix.intended_strength <= Percent{}) return false;
    return std::abs(*mix.strength / *mix.intended_strength - 1) > slight;
}

} // namespace dyeleaf
