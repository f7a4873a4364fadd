#include "facts/swatches.h"

#include "base/number.h"
#include "base/overloaded.h"
#include "colour/spaces.h"
#include "facts/names.h"
#include "facts/wording.h"

#include <algorithm>

namespace dyeleaf {

namespace {

constexpr Rgb paper{1, 1, 1};

// No finer than depths are printed.
constexpr int depth_places = 4;

// The same depth written twice is one depth.
bool same_depth(Percent a, Percent b) {
    return decimal(a.number(), depth_places) == decimal(b.number(), depth_places);
}

template <class Value> bool holds(const std::vector<Value>& values, const Value& value) {
    return std::ranges::find(values, value) != values.end();
}

std::string with_note(const Language& language, const std::string& description, std::string_view key) {
    return description + ", " + language.say(key);
}

std::string words_at_depth(const Language& language, const Records& records, const Dye& dye, Percent depth,
                           const std::string& base_id) {
    return language.say("dye.at depth", {{"dye", distinct_name(records, dye)},
                                         {"depth", percent_words(language, depth)},
                                         {"base", records.base(base_id).name}});
}

Patch patch_of(const Language& language, const std::optional<Sourced<RecordedColour>>& colour, ColourSource source,
               std::string description) {
    if (!colour) return {Patch::Kind::not_recorded, paper, with_note(language, description, "dye.no colour")};
    Patch patch{Patch::Kind::recorded, rgb_of(colour->value), std::move(description)};
    if (source == ColourSource::photo) {
        patch.kind = Patch::Kind::estimated;
        patch.description = with_note(language, patch.description, "dye.from a photo");
        patch.says = {language.say("dye.recorded by.photo"), language.say("dye.photo")};
    }
    if (is_beyond_print(colour->value)) {
        patch.beyond_print = true;
        patch.description = with_note(language, patch.description, "dye.beyond print patch");
    }
    return patch;
}

Patch with_code(Patch patch, const std::string& code) {
    patch.code = code;
    return patch;
}

} // namespace

Lab lab_of(const RecordedColour& colour) {
    return std::visit(Overloaded{[](Lab lab) { return lab; },
                                 [](const Boxed<PhotoColour>& photo) { return photo->reading.value().colour; },
                                 [](const auto& other) { return to_lab(other); }},
                      colour);
}

Rgb rgb_of(const RecordedColour& colour) {
    return std::visit(
        Overloaded{[](Rgb rgb) { return rgb; }, [&](const auto&) { return to_rgb(lab_of(colour)).colour; }}, colour);
}

bool is_beyond_print(const RecordedColour& colour) {
    return !std::holds_alternative<Rgb>(colour) && !to_rgb(lab_of(colour)).in_gamut;
}

bool is_beyond_print(const Dye& dye) {
    const auto is_beyond = [](const Swatch& swatch) { return swatch.colour && is_beyond_print(swatch.colour->value); };
    return dye.fluorescent != true && std::ranges::any_of(dye.swatches, is_beyond);
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

std::optional<std::string> swatching_dates(const Language& language, const Swatches& swatches) {
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
    if (!first) return language.say("dates.unknown");
    std::string days = short_date(language, *first);
    if (*first != *last) days = language.say("dates.span", {{"first", days}, {"last", short_date(language, *last)}});
    if (undated == 0) return days;
    return language.say("dates.undated", {{"dates", days}, {"count", count_words(language, undated)}});
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

Patch patch_of(const Language& language, const Records& records, const Dye& dye, const Swatch& swatch) {
    std::string description = words_at_depth(language, records, dye, swatch.depth, swatch.base.value);
    if (dye.fluorescent == true) {
        const Rgb tint = swatch.colour ? rgb_of(swatch.colour->value) : paper;
        return {Patch::Kind::not_printable, tint, with_note(language, description, "dye.fluorescent patch")};
    }
    return with_code(patch_of(language, swatch.colour, swatch.colour_source, std::move(description)), dye.code);
}

Patch patch_at(const Language& language, const Records& records, const Dye& dye, Percent depth,
               const std::string& base_id) {
    if (const Swatch* swatch = swatch_at(dye, depth, base_id)) return patch_of(language, records, dye, *swatch);
    const std::string description = words_at_depth(language, records, dye, depth, base_id);
    return {Patch::Kind::not_recorded, paper, with_note(language, description, "dye.not swatched")};
}

std::string estimated_words(const Language& language, const Records& records, const Dye& dye, Percent depth,
                            const std::string& base_id) {
    return with_note(language, words_at_depth(language, records, dye, depth, base_id), "ramp.between swatches");
}

Patch deepest_patch(const Language& language, const Records& records, const Dye& dye) {
    if (const Swatch* swatch = deepest_swatch(dye)) return patch_of(language, records, dye, *swatch);
    const std::string name = distinct_name(records, dye);
    if (dye.fluorescent == true)
        return {Patch::Kind::not_printable, paper, with_note(language, name, "dye.fluorescent patch")};
    return {Patch::Kind::not_recorded, paper, with_note(language, name, "dye.not swatched")};
}

Patch patch_of(const Language& language, const Records& records, const Dye& dye, const Component& component) {
    const std::string colour = component.name.empty() ? language.say("dye.this colour") : component.name;
    const bool is_photo = component.colour && photo_of(component.colour->value) != nullptr;
    return patch_of(language, component.colour, is_photo ? ColourSource::photo : ColourSource::eye,
                    language.say("dye.breaks into", {{"dye", distinct_name(records, dye)}, {"colour", colour}}));
}

Patch patch_of(const Language& language, const Records& records, const Lot& lot) {
    std::string description =
        language.say("yarn.on base", {{"colourway", lot.colourway}, {"base", records.base(lot.base.value).name}});
    Patch patch = with_code(patch_of(language, lot.colour, lot.colour_source, std::move(description)), lot.id.value);
    patch.beyond_print = false; // its tag hangs on the yarn
    return patch;
}

} // namespace dyeleaf
