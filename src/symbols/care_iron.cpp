#include "symbols/care.h"
#include "symbols/care_parts.h"

namespace dyeleaf::drawing {

namespace {

constexpr double iron_width = 108;

// Seen from the side, its tip to the left; the handle is open in front.
Ink bare_iron() {
    return {care_line("M 34 6.5 H 80 C 86 6.5 89.2 9.6 90.2 15 L 101.5 77.5 H 6.5 C 7.5 58 19 44 38 44 H 95.4")};
}

} // namespace

DisplayList iron(int dot_count) {
    Ink ink = bare_iron();
    append(ink, dots(dot_count, at(58, 60.7)));
    if (dot_count == 0) append(ink, cross(iron_width));
    return care_sheet(iron_width, std::move(ink));
}

// The iron is a little lower here, so that steam has room below its sole.
DisplayList iron_without_steam() {
    return care_sheet(iron_width, {care_line("M 34 6.5 H 80 C 86 6.5 89.2 8.8 90.2 13 L 101.5 62.5 H 6.5 "
                                             "C 7.5 47 19 36 38 36 H 95.4"),
                                   care_line("M 42 72.5 V 97.5 M 66 72.5 V 97.5"),
                                   care_line("M 24 72.5 L 84 97.5 M 84 72.5 L 24 97.5")});
}

} // namespace dyeleaf::drawing
