// Looks into the pictures that records name.
#pragma once

#include "base/diagnostic.h"
#include "records/records.h"

#include <filesystem>

namespace dyeleaf {

// Those that lie in `folder` and have no fault get their file; each other is an error where it is named. Colours that
// are to be read from photographs get their reading, else they are gone and there is an error.
void read_pictures(Records& records, const std::filesystem::path& folder, Diagnostics& diagnostics);

} // namespace dyeleaf
