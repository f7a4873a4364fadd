#include "symbols/care.h"
#include "symbols/care_parts.h"
#include "symbols/figures.h"

namespace dyeleaf::drawing {

namespace {

constexpr double circle_width = 84;

Ink circle(std::string_view letter) {
    Ink ink = {care_line(circle_path(at(42, 42), units(35.5)))};
    // The bowl of a P and the arms of an F weigh to the right; W stands in the middle.
    if (letter == "P") ink.emplace_back(care_line(figures_path(letter, at(43.5, 42))));
    if (letter == "F") ink.emplace_back(care_line(figures_path(letter, at(43.5, 42))));
    if (letter == "W") ink.emplace_back(care_line(figures_path(letter, at(42, 43))));
    return ink;
}

DisplayList crossed(Ink ink) {
    append(ink, cross(circle_width));
    return care_sheet(circle_width, std::move(ink));
}

} // namespace

DisplayList professional(std::string_view letter, int bar_count) {
    Ink ink = circle(letter);
    append(ink, bars(bar_count, circle_width / 2, 52));
    return care_sheet(circle_width, std::move(ink));
}

DisplayList no_dry_clean() {
    return crossed(circle({}));
}

DisplayList no_wet_clean() {
    return crossed(circle("W"));
}

} // namespace dyeleaf::drawing
