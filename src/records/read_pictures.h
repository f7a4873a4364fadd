// Looks into the pictures that records name.
#pragma once

#include "base/diagnostic.h"
#include "base/reach.h"
#include "records/records.h"

namespace dyeleaf {

// Those within `reach` that have no fault get their file; each other is an error where it is named. Colours that
// are to be read from photographs get their reading, else they are gone and there is an error.
void read_pictures(Records& records, const Reach& reach, Diagnostics& diagnostics);

} // namespace dyeleaf
