// Colour spaces and contrast: what a recorded colour looks like in sRGB, and what can be read on it.
#pragma once

#include "base/colour.h"

namespace dyeleaf {

struct RgbResult {
    Rgb colour;            // each channel clipped to 0 to 1
    bool in_gamut = false; // false: the colour is stronger than sRGB can show and was clipped
};

RgbResult to_rgb(Lab colour);
Lab to_lab(Rgb colour);

double chroma(Lab colour);

// 1 (none) to 21 (black on white), whichever is the lighter.
double contrast_ratio(Rgb a, Rgb b);
// The ink with more contrast on a ground of this colour.
Rgb black_or_white_on(Rgb ground);

} // namespace dyeleaf
