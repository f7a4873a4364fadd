// What would embarrass the dyer in a lot: codes that are mistaken for others, numbers that cannot be meant.
#pragma once

#include "base/diagnostic.h"
#include "records/records.h"

namespace dyeleaf {

// `lot` is one of the records' lots.
void check_lot_code(const Records& records, const Lot& lot, Diagnostics& diagnostics);
// With lots of its colourway and base that stand before it in the records.
void check_differences(const Records& records, const Lot& lot, Diagnostics& diagnostics);
void check_skeins(const Records& records, const Lot& lot, Diagnostics& diagnostics);

} // namespace dyeleaf
