// The imperial units that yarn is sold by, exact by the international yard and pound agreement of 1959 (from memory).
// (The inch of the same agreement is inches(1) in length.h.)
#pragma once

#include "base/length.h"
#include "base/quantity.h"

namespace dyeleaf {

inline constexpr Length yard = metres(0.9144);
inline constexpr Mass pound = grams(453.59237);
inline constexpr Mass ounce = pound / 16;

} // namespace dyeleaf
