#pragma once

#include "base/diagnostic.h"

#include <filesystem>

namespace dyeleaf {

// Makes the names in `folder` outlive a power cut, after `made` was put there. False, with an error that names `made`,
// where the disk fails. Folders that cannot do it, as some on a network, are let be: what is in them stands all the
// same.
bool sync_folder(const std::filesystem::path& folder, const std::filesystem::path& made, Diagnostics& diagnostics);

} // namespace dyeleaf
