// What a base's care leaves out, and where it asks more than its fibres usually bear.
#pragma once

#include "base/diagnostic.h"
#include "records/records.h"

namespace dyeleaf {

// A base without care is complained of once some lot is dyed on it. Of symbols it is only known that she must ask.
void check_care(const Records& records, const Base& base, Diagnostics& diagnostics);

} // namespace dyeleaf
