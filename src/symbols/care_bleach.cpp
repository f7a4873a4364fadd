#include "symbols/care.h"
#include "symbols/care_parts.h"

namespace dyeleaf::drawing {

// An equilateral triangle; the two lines run parallel to its left side.
DisplayList bleach(Bleach bleach) {
    constexpr double width = 95;
    Ink ink = {care_line("M 47.5 6.5 L 88.5 77.5 H 6.5 Z")};
    if (bleach == Bleach::oxygen) ink.emplace_back(care_line("M 36 77.5 L 62.3 32.1 M 60.6 77.5 L 74.6 53.3"));
    if (bleach == Bleach::none) append(ink, cross(width));
    return care_sheet(width, std::move(ink));
}

} // namespace dyeleaf::drawing
