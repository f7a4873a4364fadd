// Oklab, in which equal steps of hue look equal all round (B. Ottosson, "A perceptual color space for image
// processing", 2020, in the form and with the matrices of CSS Color 4).
#pragma once

#include "base/colour.h"

namespace dyeleaf {

// Lightness 0 to 1; a and b about -0.4 to 0.4.
struct Oklab {
    double lightness = 0, a = 0, b = 0;
    friend constexpr bool operator==(Oklab, Oklab) = default;
};

Oklab to_oklab(Lab colour);
Lab to_lab(Oklab colour);

} // namespace dyeleaf
