// Cards in laminating pouches.
#pragma once

#include "sheets/impose.h"

#include <string>
#include <vector>

namespace dyeleaf {

// Whether every card leaves its film all round in the pouch of the stock, which has one; else there are errors.
bool goes_into_pouch(const std::vector<Trim>& labels, const Stock& stock, const std::vector<std::string>& names,
                     const Spot& at, Diagnostics& diagnostics);

} // namespace dyeleaf
