// What a base's care leaves out, and where it asks more than its fibres usually bear.
#pragma once

#include "base/diagnostic.h"
#include "records/records.h"

namespace dyeleaf {

void check_care(const Base& base, Diagnostics& diagnostics);
// Whether the studio may set care in symbols is not known here; that it must ask is.
void check_care_symbols(const Studio& studio, Diagnostics& diagnostics);

} // namespace dyeleaf
