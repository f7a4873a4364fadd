// The steps between the colour spaces, for the files that turn one into another.
#pragma once

#include "base/colour.h"

#include <array>

namespace dyeleaf {

using Triple = std::array<double, 3>;

// Linear sRGB, each channel 0 to 1 inside the gamut.
Triple linear_rgb(Rgb colour);
Triple linear_rgb(Lab colour);

} // namespace dyeleaf
