// Puts a file in place whole or not at all.
#pragma once

#include "base/diagnostic.h"

#include <filesystem>
#include <string>

namespace dyeleaf {

// Writes beside the target, syncs, then renames over it; on any failure the target is as it was, the temporary is gone
// and there is an error that names the file. True when the new file stands.
bool write_file(const std::filesystem::path& target, const std::string& bytes, Diagnostics& diagnostics);

} // namespace dyeleaf
