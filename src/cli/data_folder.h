// Where the fonts, layouts and examples lie that come with the program.
#pragma once

#include "base/diagnostic.h"

#include <filesystem>
#include <optional>
#include <string>

namespace dyeleaf {

// `home` (the variable DYELEAF_HOME) where it is set, and then nothing else; otherwise the first that holds fonts and
// layouts: ../share/dyeleaf beside the program's folder, the folder above the program's, `source_folder`. None: an
// error that says where it looked.
std::optional<std::filesystem::path> find_data_folder(const std::optional<std::string>& home,
                                                      const std::filesystem::path& program,
                                                      const std::filesystem::path& source_folder,
                                                      Diagnostics& diagnostics);

// The running program's own file, `called_as` where the system does not tell.
std::filesystem::path program_file(const std::filesystem::path& called_as);

} // namespace dyeleaf
