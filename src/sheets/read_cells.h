// The ready-cut cells of a stock file.
#pragma once

#include "sheets/stock.h"

namespace dyeleaf {

// Cells on a sheet of this size, or nothing and errors with their arithmetic.
std::optional<CellGrid> read_cells(const Node& node, Size paper, Diagnostics& diagnostics);

} // namespace dyeleaf
