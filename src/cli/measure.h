// The measuring sheet as a file.
#pragma once

#include "cli/pipeline.h"

namespace dyeleaf {

// Nothing where the diagnostics have errors.
std::optional<Rendering> measure(const MeasurePrinter& request, const Library& library, Diagnostics& diagnostics);

} // namespace dyeleaf
