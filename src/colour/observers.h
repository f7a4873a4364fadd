// The CIE's two standard eyes.
#pragma once

#include "colour/matrix.h"
#include "colour/visible.h"

#include <array>

namespace dyeleaf {

// CIE 1931, a field 2° wide, by which Lab and sRGB are defined here; and CIE 1964, 10°, which instruments offer too.
enum class Observer { two_degrees, ten_degrees };

// x, y and z of each wavelength.
const std::array<Triple, visible::count>& matching_functions(Observer observer);

} // namespace dyeleaf
