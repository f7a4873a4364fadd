// Files and folders as the readers see them.
#pragma once

#include "base/diagnostic.h"
#include "source/document.h"

#include <filesystem>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace dyeleaf {

// A regular file's bytes, at most `limit`; otherwise an error that says why (missing, a folder, no permission,
// not a plain file, too large). `name` is what complaints call it.
std::shared_ptr<const SourceFile> read_file(const std::filesystem::path& path, const std::string& name,
                                            std::size_t limit, Diagnostics& diagnostics);

// Every *.yaml and *.yml directly inside `folder`, sorted by name, hidden files left out; complaints call each by
// its path below `folder`'s own name. A folder that is missing, not a folder or without such files is an error; a file
// whose name ends in .yaml.txt, or so, is a warning.
std::vector<std::shared_ptr<const SourceFile>> read_folder(const std::filesystem::path& folder,
                                                           Diagnostics& diagnostics);

} // namespace dyeleaf
