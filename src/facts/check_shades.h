// Recorded colours that do not follow their depths.
#pragma once

#include "base/diagnostic.h"
#include "records/records.h"

namespace dyeleaf {

// Warns where a deeper swatch is plainly lighter than the one before it on the same base.
void check_shades(const Records& records, const Dye& dye, Diagnostics& diagnostics);

} // namespace dyeleaf
