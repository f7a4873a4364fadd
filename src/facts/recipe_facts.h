// What the dye bench asks of a lot.
#pragma once

#include "facts/facts.h"

#include <vector>

namespace dyeleaf {

// Rows about a LotView.
std::vector<FactRow> recipe_rows();

} // namespace dyeleaf
