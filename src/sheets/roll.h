// Labels one after the other along a roll.
#pragma once

#include "sheets/impose.h"

#include <string>
#include <vector>

namespace dyeleaf {

// A page a label, as wide as the roll; a label that is too wide lies on its side. `order` holds the labels as they come
// out. One that fits neither way is an error, and then there are no pages.
std::vector<SheetPlan> along_roll(const Trims& labels, const std::vector<std::size_t>& order, const Stock& stock,
                                  const NameOfLabel& name, const Spot& at, Diagnostics& diagnostics);

// The label's bleed as far as its page reaches.
Length bleed_on_roll(const Stock& stock, const Trim& trim);

} // namespace dyeleaf
