#include "records/light.h"

#include <algorithm>
#include <string>
#include <utility>

namespace dyeleaf {

namespace {

constexpr std::pair<std::string_view, Illuminant> lights[] = {
    {"a", Illuminant::a},     {"d50", Illuminant::d50}, {"d55", Illuminant::d55}, {"d65", Illuminant::d65},
    {"d75", Illuminant::d75}, {"f2", Illuminant::f2},   {"f11", Illuminant::f11}};

constexpr std::pair<std::string_view, Observer> eyes[] = {{"2", Observer::two_degrees},
                                                          {"2°", Observer::two_degrees},
                                                          {"10", Observer::ten_degrees},
                                                          {"10°", Observer::ten_degrees}};

template <class Table> auto find(const Table& table, std::string_view word) {
    return std::ranges::find_if(table, [&](const auto& row) { return row.first == word; });
}

} // namespace

std::variant<Light, Complaint> parse_light(std::string_view text) {
    const std::string lower = lower_case(text);
    constexpr std::string_view under = "under ";
    if (!lower.starts_with(under)) {
        return Complaint{"behind the bracket stands " + shown(text),
                         "only the light of an instrument can stand there, as in \"lab(31 12 -24) under D65/10\""};
    }
    const std::string_view named = trimmed(std::string_view{lower}.substr(under.size()));
    const std::size_t stroke = std::min(named.find('/'), named.size());
    const auto* light = find(lights, trimmed(named.substr(0, stroke)));
    if (light == std::end(lights)) {
        return Complaint{shown(text) + " names no light that is known here",
                         "the lights are A, D50, D55, D65, D75, F2 and F11; without “under” it is D50"};
    }
    if (stroke == named.size()) return Light{light->second, Observer::two_degrees};
    const auto* eye = find(eyes, trimmed(named.substr(stroke + 1)));
    if (eye == std::end(eyes)) {
        return Complaint{shown(text) + " names no observer that is known here",
                         "behind the stroke stands the observer's angle as the instrument gives it, /2 or /10"};
    }
    return Light{light->second, eye->second};
}

} // namespace dyeleaf
