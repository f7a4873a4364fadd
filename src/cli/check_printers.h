// Readings that cannot be, or hardly.
#pragma once

#include "base/diagnostic.h"
#include "records/records.h"

#include <vector>

namespace dyeleaf {

// Complains of papers that are none, of lines that no printer draws so long, and of a tray that is recorded twice.
void check_printers(const std::vector<Printer>& printers, Diagnostics& diagnostics);

} // namespace dyeleaf
