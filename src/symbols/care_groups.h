// The care symbols of each process, in the order of records/care.cpp.
#pragma once

#include "symbols/named_drawing.h"

#include <vector>

namespace dyeleaf::care {

std::vector<NamedDrawing> wash_symbols();
std::vector<NamedDrawing> bleach_symbols();
std::vector<NamedDrawing> dry_symbols();
std::vector<NamedDrawing> iron_symbols();
std::vector<NamedDrawing> professional_symbols();

} // namespace dyeleaf::care
