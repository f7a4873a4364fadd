// Whether a studio's folder is what it seems.
#pragma once

#include "base/diagnostic.h"
#include "base/reach.h"

namespace dyeleaf {

// Complains of links that lead out of reach among the files and folders that dyeleaf would read there, and of what
// should be a folder and is none.
void check_folder(const Reach& studio, Diagnostics& diagnostics);

} // namespace dyeleaf
