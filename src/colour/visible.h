// The light that is seen, as the CIE tabulates it.
#pragma once

#include <array>
#include <cstddef>

namespace dyeleaf {

namespace visible {

constexpr int from = 380, step = 5; // nm
constexpr std::size_t count = 81;   // to 780 nm

constexpr int wavelength(std::size_t index) {
    return from + step * static_cast<int>(index);
}

} // namespace visible

// One value for each of those wavelengths.
using Curve = std::array<double, visible::count>;

} // namespace dyeleaf
