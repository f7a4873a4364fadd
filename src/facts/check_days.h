// Days that have not come yet, though something is said to have been done on them.
#pragma once

#include "base/date.h"
#include "base/diagnostic.h"
#include "records/records.h"

namespace dyeleaf {

// `today` is known to the day. A month or a year is still to come when its first day is.
void check_days(const Dye& dye, const Date& today, Diagnostics& diagnostics);
void check_days(const Jar& jar, const Date& today, Diagnostics& diagnostics);
void check_days(const Lot& lot, const Date& today, Diagnostics& diagnostics);

} // namespace dyeleaf
