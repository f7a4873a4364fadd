#include "facts/dye_wording.h"

#include "base/words.h"
#include "facts/names.h"
#include "facts/wording.h"

#include <algorithm>
#include <vector>

namespace dyeleaf {

std::string_view words(SpeckleGrade grade) {
    switch (grade) {
    case SpeckleGrade::clean: return "clean";
    case SpeckleGrade::soft: return "soft";
    case SpeckleGrade::hazy: return "hazy";
    case SpeckleGrade::blotchy: return "blotchy";
    }
    return {};
}

Breaks breaks(const Dye& dye) {
    if (!dye.breaks_into) return Breaks::not_tried;
    return dye.breaks_into->empty() ? Breaks::no : Breaks::yes;
}

std::string_view words(Breaks breaks) {
    switch (breaks) {
    case Breaks::not_tried: return "Breaking: not tried";
    case Breaks::no: return "Does not break";
    case Breaks::yes: return "Breaks into";
    }
    return {};
}

std::string breaking_words(const Dye& dye) {
    switch (breaks(dye)) {
    case Breaks::not_tried: return "breaking not tried";
    case Breaks::no: return "does not break";
    case Breaks::yes: break;
    }
    std::vector<std::string> colours;
    for (const Component& component : *dye.breaks_into) {
        if (!component.name.empty()) colours.push_back(component.name);
    }
    return colours.empty() ? "breaks" : "breaks into " + joined(colours, " + ");
}

std::string speckle_words(const std::optional<Speckle>& speckle) {
    if (!speckle) return "Speckle: not tried";
    std::string text = capitalised(std::string{words(speckle->grade)}) + " speckles";
    if (speckle->spread) text += ", " + length_words(*speckle->spread);
    return text;
}

std::optional<std::string_view> status_words(DyeStatus status) {
    switch (status) {
    case DyeStatus::current: return std::nullopt;
    case DyeStatus::discontinued: return "Discontinued";
    case DyeStatus::reformulated: return "Reformulated";
    }
    return std::nullopt;
}

std::optional<std::string_view> fluorescent_words(const Dye& dye) {
    if (dye.fluorescent != true) return std::nullopt;
    return "Fluorescent: not printable";
}

std::optional<std::string_view> bleeding_words(const Dye& dye) {
    if (dye.bleeds != true) return std::nullopt;
    return "Bleeds";
}

std::optional<std::string_view> crocking_words(const Dye& dye) {
    if (dye.crocks != true) return std::nullopt;
    return "Rubs off";
}

std::optional<std::string_view> rinsing_words(const Dye& dye) {
    if (dye.rinses_clear != false) return std::nullopt;
    return "Never rinses clear";
}

std::optional<std::string> light_fastness_words(const Dye& dye) {
    if (!dye.light_fastness) return std::nullopt;
    return "Light fastness: " + *dye.light_fastness;
}

std::string warning_words(const Dye& dye) {
    std::vector<std::string> texts;
    for (const auto& flag : {bleeding_words(dye), crocking_words(dye), rinsing_words(dye)}) {
        if (flag) texts.emplace_back(*flag);
    }
    if (auto fastness = light_fastness_words(dye)) texts.push_back(std::move(*fastness));
    return joined(texts, dot);
}

std::string replacement_words(const Dye& replacement) {
    return "Use " + replacement.name + " (" + replacement.code + ")";
}

std::optional<std::string> namesake_words(const Records& records, const Dye& dye) {
    std::vector<std::string> places;
    for (const Dye* other : namesakes(records, dye)) {
        std::string place = other->line == dye.line ? "this line as " + other->code : other->line;
        if (std::ranges::find(places, place) == places.end()) places.push_back(std::move(place));
    }
    if (places.empty()) return std::nullopt;
    return "also in " + joined(places, ", ");
}

} // namespace dyeleaf
