// Lots of one colourway beside each other, for the terminal.
#pragma once

#include "records/records.h"

#include <string>

namespace dyeleaf {

// A table for every colourway and base of which there is more than one lot: each two of its lots, how far apart they
// are, and what to do about it.
std::string compare_lots(const Records& records);

} // namespace dyeleaf
