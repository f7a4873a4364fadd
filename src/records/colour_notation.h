// How colours are written in records: as CSS Color 4 writes them, and as instruments give them.
#pragma once

#include "records/complaint.h"
#include "records/records.h"

#include <string_view>
#include <variant>

namespace dyeleaf {

// "#8d7fa8", "#abc", "color(srgb 0.55 0.5 0.66)", "color(display-p3 …)", "lab(31 12 -24)", "lch(…)", "oklab(…)" and
// "oklch(…)", with percentages, `none` and angles in deg, grad, rad or turn. "lab(31 12 -24) under D65/10" is CIELAB
// relative to the white of another light, seen by the eye of 1931 (/2, or left out) or 1964 (/10).
// Refused is what no dyed fibre can be: it was written for another notation.
std::variant<RecordedColour, Complaint> parse_colour(std::string_view text);

} // namespace dyeleaf
