// Shares of a yarn's fibres that do not add up.
#pragma once

#include "base/quantity.h"

#include <optional>
#include <vector>

namespace dyeleaf {

// Whether the shares add up to 100 % as they stand.
bool are_whole(const std::vector<Percent>& shares);

// Whole shares that add up to 100 %, by largest remainder, equal remainders in the order given: 33.3, 33.3 and 33.3
// become 34, 33 and 33. Nothing where the sum is not between 99 and 101 %, is more above 100 % than rounding of the
// figures explains, where one fibre stands alone, or where a share would become nothing.
std::optional<std::vector<Percent>> made_whole(const std::vector<Percent>& shares);

} // namespace dyeleaf
