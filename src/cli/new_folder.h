// A first folder of records, copied from the example that comes with the program.
#pragma once

#include "base/diagnostic.h"

#include <filesystem>
#include <vector>

namespace dyeleaf {

// The files made, sorted: all of them or, with an error, none. A folder that is there and not empty stays as it is,
// with an error; nothing is ever overwritten.
std::vector<std::filesystem::path> make_folder(const std::filesystem::path& wanted,
                                               const std::filesystem::path& example, Diagnostics& diagnostics);

} // namespace dyeleaf
