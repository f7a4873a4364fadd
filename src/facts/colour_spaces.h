// The steps between the colour spaces, for the files that turn one into another.
#pragma once

#include "base/colour.h"

#include <array>

namespace dyeleaf {

using Triple = std::array<double, 3>;

// One sRGB channel: light in proportion to what is emitted, and the value as coded. Both go on below 0 and above 1,
// mirrored at 0, so that a colour outside sRGB keeps its hue.
double decoded(double coded);
double coded(double linear);

// Linear sRGB, each channel 0 to 1 inside the gamut.
Triple linear_rgb(Rgb colour);
Triple linear_rgb(Lab colour);

} // namespace dyeleaf
