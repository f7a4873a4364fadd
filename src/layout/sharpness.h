// Whether pictures have pixels enough for the size at which they print.
#pragma once

#include "base/diagnostic.h"
#include "layout/place.h"

namespace dyeleaf {

// Common practice: print shops ask for 300 pixels to the inch; below half of that single pixels begin to show.
inline constexpr int least_pixels_to_the_inch = 150;

// Warns of each picture below that, with the largest size at which it is sharp. Drawings are sharp at any.
void check_sharpness(const Placement& placement, Diagnostics& diagnostics);

} // namespace dyeleaf
