// The dyer's profile of her printer.
#pragma once

#include "base/diagnostic.h"
#include "profiles/printer_colours.h"

#include <filesystem>
#include <optional>

namespace dyeleaf {

// Nothing, with an error, where there is no such file, or where it is no whole profile of a printer that prints in
// black, RGB or CMYK.
std::optional<PrinterColours> read_printer_profile(const std::filesystem::path& file, Diagnostics& diagnostics);

} // namespace dyeleaf
