// The stocks there are, on paper.
#pragma once

#include "cli/pipeline.h"

namespace dyeleaf {

// A PDF that shows every stock small, the dyer's own among them; nothing where the diagnostics have errors.
std::optional<Rendering> chart_stocks(const ShowStocks& request, const Library& library, Diagnostics& diagnostics);

} // namespace dyeleaf
