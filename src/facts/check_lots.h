// What would embarrass the dyer in a lot: codes that are mistaken for others, numbers that cannot be meant.
#pragma once

#include "base/diagnostic.h"
#include "facts/lot_groups.h"
#include "records/records.h"

namespace dyeleaf {

// `lot` is one of the records' lots, here and below.
void check_lot_code(const Studio& studio, const Lot& lot, Diagnostics& diagnostics);
// With any other lot of the records.
void check_look_alikes(const LotGroups& by_reading, const Lot& lot, Diagnostics& diagnostics);
// With lots of its colourway and base that stand before it in the records.
void check_differences(const LotGroups& by_yarn, const Lot& lot, const LotLimits& limits, Diagnostics& diagnostics);
void check_skeins(const Records& records, const Lot& lot, Diagnostics& diagnostics);

} // namespace dyeleaf
