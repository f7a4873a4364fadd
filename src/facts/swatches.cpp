#include "facts/swatches.h"

#include "base/overloaded.h"
#include "facts/colour.h"
#include "facts/names.h"
#include "facts/wording.h"

#include <algorithm>

namespace dyeleaf {

namespace {

constexpr Rgb paper{1, 1, 1};

// The same depth written twice is one depth.
bool same_depth(Percent a, Percent b) {
    return percent_words(a) == percent_words(b);
}

template <class Value> bool holds(const std::vector<Value>& values, const Value& value) {
    return std::ranges::find(values, value) != values.end();
}

Patch patch_of(const std::optional<Sourced<RecordedColour>>& colour, ColourSource source, std::string description) {
    if (!colour) return {Patch::Kind::not_recorded, paper, std::move(description) + ", no colour recorded"};
    const Rgb rgb = rgb_of(colour->value);
    if (source == ColourSource::photo) {
        return {Patch::Kind::estimated, rgb, std::move(description) + ", estimated from a photo"};
    }
    return {Patch::Kind::recorded, rgb, std::move(description)};
}

} // namespace

Lab lab_of(const RecordedColour& colour) {
    return std::visit(Overloaded{[](Rgb rgb) { return to_lab(rgb); }, [](Lab lab) { return lab; }}, colour);
}

Rgb rgb_of(const RecordedColour& colour) {
    return std::visit(Overloaded{[](Rgb rgb) { return rgb; }, [](Lab lab) { return to_rgb(lab).colour; }}, colour);
}

std::vector<std::string> swatched_bases(const Dye& dye) {
    std::vector<std::string> bases;
    for (const Swatch& swatch : dye.swatches) {
        if (!holds(bases, swatch.base.value)) bases.push_back(swatch.base.value);
    }
    return bases;
}

std::vector<Percent> swatched_depths(const Dye& dye) {
    std::vector<Percent> depths;
    for (const Swatch& swatch : dye.swatches)
        depths.push_back(swatch.depth);
    std::ranges::sort(depths);
    depths.erase(std::unique(depths.begin(), depths.end(), same_depth), depths.end());
    return depths;
}

Swatches swatches_on(const Dye& dye, const std::string& base_id) {
    Swatches result;
    for (const Swatch& swatch : dye.swatches) {
        if (swatch.base.value == base_id) result.push_back(&swatch);
    }
    std::ranges::stable_sort(result, {}, &Swatch::depth);
    return result;
}

Swatches swatches_in_order(const Dye& dye) {
    Swatches result;
    for (const std::string& base : swatched_bases(dye)) {
        const Swatches here = swatches_on(dye, base);
        result.insert(result.end(), here.begin(), here.end());
    }
    return result;
}

std::optional<std::string> swatching_dates(const Swatches& swatches) {
    std::optional<Date> first;
    std::optional<Date> last;
    bool recorded = false;
    int undated = 0;
    for (const Swatch* swatch : swatches) {
        recorded = recorded || swatch->dyed;
        const auto dyed = known_date(swatch->dyed);
        if (!dyed) ++undated;
        if (!dyed) continue;
        if (!first || *dyed < *first) first = dyed;
        if (!last || *dyed > *last) last = dyed;
    }
    if (!recorded) return std::nullopt;
    if (!first) return std::string{date_unknown_words};
    const std::string days = *first == *last ? short_date(*first) : short_date(*first) + " to " + short_date(*last);
    return undated == 0 ? days : days + ", " + count_words(undated) + " undated";
}

const Swatch* swatch_at(const Dye& dye, Percent depth, const std::string& base_id) {
    const Swatch* best = nullptr;
    for (const Swatch& swatch : dye.swatches) {
        if (swatch.base.value != base_id || !same_depth(swatch.depth, depth)) continue;
        if (best == nullptr || swatch.colour || !best->colour) best = &swatch;
    }
    return best;
}

const Swatch* deepest_swatch(const Dye& dye) {
    const Swatch* best = nullptr;
    for (const Swatch& swatch : dye.swatches) {
        const bool better = best == nullptr || (swatch.colour && !best->colour) ||
                            (swatch.colour.has_value() == best->colour.has_value() && swatch.depth > best->depth);
        if (better) best = &swatch;
    }
    return best;
}

std::optional<Lab> deepest_colour(const Dye& dye) {
    const Swatch* swatch = deepest_swatch(dye);
    if (swatch == nullptr || !swatch->colour) return std::nullopt;
    return lab_of(swatch->colour->value);
}

Patch patch_of(const Records& records, const Dye& dye, const Swatch& swatch) {
    const Base& base = records.base(swatch.base.value);
    std::string description = distinct_name(records, dye) + " at " + percent_words(swatch.depth) + " on " + base.name;
    if (dye.fluorescent == true) {
        const Rgb tint = swatch.colour ? rgb_of(swatch.colour->value) : paper;
        return {Patch::Kind::not_printable, tint, std::move(description) + ", fluorescent: not printable"};
    }
    return patch_of(swatch.colour, swatch.colour_source, std::move(description));
}

Patch patch_at(const Records& records, const Dye& dye, Percent depth, const std::string& base_id) {
    if (const Swatch* swatch = swatch_at(dye, depth, base_id)) return patch_of(records, dye, *swatch);
    return {Patch::Kind::not_recorded, paper,
            distinct_name(records, dye) + " at " + percent_words(depth) + " on " + records.base(base_id).name +
                ", not swatched"};
}

Patch deepest_patch(const Records& records, const Dye& dye) {
    if (const Swatch* swatch = deepest_swatch(dye)) return patch_of(records, dye, *swatch);
    if (dye.fluorescent == true) {
        return {Patch::Kind::not_printable, paper, distinct_name(records, dye) + ", fluorescent: not printable"};
    }
    return {Patch::Kind::not_recorded, paper, distinct_name(records, dye) + ", not swatched"};
}

Patch patch_of(const Records& records, const Dye& dye, const Component& component) {
    std::string description = distinct_name(records, dye) + " breaks into " +
                              (component.name.empty() ? std::string{"this colour"} : component.name);
    return patch_of(component.colour, ColourSource::eye, std::move(description));
}

Patch patch_of(const Records& records, const Lot& lot) {
    std::string description = lot.colourway + " on " + records.base(lot.base.value).name;
    return patch_of(lot.colour, lot.colour_source, std::move(description));
}

} // namespace dyeleaf
