// sRGB and CIELAB: what a recorded colour looks like on a screen.
#pragma once

#include "base/colour.h"
#include "colour/matrix.h"

namespace dyeleaf {

struct RgbResult {
    Rgb colour;            // each channel clipped to 0 to 1
    bool in_gamut = false; // false: the colour is stronger than sRGB can show and was clipped
};

RgbResult to_rgb(Lab colour);
Lab to_lab(Rgb colour);

// Linear sRGB, each channel 0 to 1 inside the gamut.
Triple linear_rgb(Rgb colour);
Triple linear_rgb(Lab colour);
Lab lab_of_linear_rgb(const Triple& linear);

// Display P3 as CSS Color 4 has it: each channel coded as in sRGB, 0 to 1.
Lab lab_of_display_p3(const Triple& coded);

} // namespace dyeleaf
