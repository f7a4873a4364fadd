// What a printer will make of every recorded colour, for the terminal.
#pragma once

#include "profiles/printer_colours.h"
#include "records/records.h"

#include <string>

namespace dyeleaf {

// A table with the worst first, and how many lie beyond the printer's inks.
std::string show_gamut(const Records& records, const PrinterColours& printer);

} // namespace dyeleaf
