// The CIE's standard lights.
#pragma once

#include "colour/observers.h"
#include "colour/visible.h"
#include "colour/xyz.h"

namespace dyeleaf {

// A: light bulbs. D50, D55, D65, D75: daylight, from warm to cool. F2 (cool white) and F11 (three bands): tubes.
enum class Illuminant { a, d50, d55, d65, d75, f2, f11 };

// Relative spectral power.
Curve spectral_power(Illuminant illuminant);

// Of a perfect white in this light: ASTM E308, tables 5, as instruments have it.
Xyz white_of(Illuminant illuminant, Observer observer);

} // namespace dyeleaf
