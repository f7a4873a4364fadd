// The fonts that may be used, and no others.
#pragma once

#include "base/diagnostic.h"

#include <fontconfig/fontconfig.h>

#include <filesystem>
#include <memory>
#include <string>
#include <vector>

namespace dyeleaf {

struct FcConfigDeleter {
    void operator()(FcConfig* config) const { FcConfigDestroy(config); }
};

struct FontSet {
    std::unique_ptr<FcConfig, FcConfigDeleter> config;
    std::vector<std::string> families; // by name, each once
};

// A configuration made from nothing: no system file is read, no cache is kept, nothing is printed. Of two files that
// hold the same face, the one in the earlier folder counts. A folder that does not exist is taken as empty.
FontSet load_fonts(const std::vector<std::filesystem::path>& folders, Diagnostics& diagnostics);

} // namespace dyeleaf
