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

void portion(Parts& parts, Mass whole, Mass step, bool estimated) {
    for (MixPart& part : parts) {
        const Mass exact = whole * (part.share->number() / 100);
        part.mass = rounded_to(exact, estimated && exact >= coarse_from ? std::max(step, coarse_step) : step);
    }
}

} // namespace

Mix work_out(std::vector<MixPart> parts, Basis basis, const MixAmount& amount) {
    Mix mix{std::move(parts), basis, {}, {}, amount.batch, false, false, false};
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

Mix mix_of(const Records& records, const Jar& jar) {
    Parts parts;
    for (const Part& part : jar.parts) {
        MixPart mixed{{}, part.is_dye, part.parts, part.mass, {}, {}, {}};
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
    return work_out(std::move(parts), jar.basis, {jar.batch, jar.holds, records.studio.scale_step});
}

bool rounding_shows(const Mix& mix) {
    if (!mix.strength || !mix.intended_strength || *mix.intended_strength <= Percent{}) return false;
    return std::abs(*mix.strength / *mix.intended_strength - 1) > slight;
}

} // namespace dyeleaf
