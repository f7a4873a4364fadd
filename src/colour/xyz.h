// CIE XYZ, the space that all others meet in, and CIELAB.
#pragma once

#include "base/colour.h"

namespace dyeleaf {

// Y of a perfect white is 1.
struct Xyz {
    double x = 0, y = 0, z = 0;
    friend constexpr bool operator==(Xyz, Xyz) = default;
};

// From its chromaticity.
constexpr Xyz white_at(double x, double y) {
    return {x / y, 1, (1 - x - y) / y};
}

// Four-digit chromaticities, as CSS Color 4 takes them.
constexpr Xyz white_d50 = white_at(0.3457, 0.3585);
constexpr Xyz white_d65 = white_at(0.3127, 0.3290);

// What looks under the white `to` as `colour` does under `from`: Bradford's cone responses, as in ICC.1 annex E.
Xyz adapted(Xyz colour, Xyz from, Xyz to);

// CIELAB relative to D50 and XYZ relative to D50 (CIE 15:2004, 8.2.1). Use `adapted` for other whites.
Lab to_lab(Xyz relative_to_d50);
Xyz to_xyz(Lab colour);
// CIELAB relative to any white.
Lab to_lab(Xyz colour, Xyz white);
Xyz to_xyz(Lab colour, Xyz white);

double chroma(Lab colour);

} // namespace dyeleaf
