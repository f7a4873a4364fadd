// How far apart two colours look, as one number.
#pragma once

#include "base/colour.h"

namespace dyeleaf {

// ΔE*ab of 1976: the distance in CIELAB (ISO/CIE 11664-4).
double delta_e_76(Lab a, Lab b);

// ΔE00, CIEDE2000 (ISO/CIE 11664-6) with all its weights 1, so that it can be compared with published tolerances. As
// written out by G. Sharma, W. Wu and E. N. Dalal, Color Research and Application 30 (2005), 21 to 30.
double delta_e_2000(Lab a, Lab b);

} // namespace dyeleaf
