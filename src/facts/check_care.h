// What a base's care leaves out, and where it asks more than its fibres usually bear.
#pragma once

#include "base/diagnostic.h"
#include "records/records.h"

namespace dyeleaf {

// A base without care is complained of once some lot is dyed on it.
void check_care(const Records& records, const Base& base, Diagnostics& diagnostics);

// Of symbols it is only known that the dyer must ask. She has chosen them: not to be said at every printing.
void check_care_symbols(const Records& records, Diagnostics& diagnostics);

} // namespace dyeleaf
