// What would embarrass the dyer on paper: warned of before anything is printed. None of it stops a label.
#pragma once

#include "base/date.h"
#include "base/diagnostic.h"
#include "records/records.h"

#include <span>

namespace dyeleaf {

void check_dye(const Records& records, const Dye& dye, const Date& today, Diagnostics& diagnostics);
void check_jar(const Records& records, const Jar& jar, const Date& today, Diagnostics& diagnostics);
void check_base(const Records& records, const Base& base, Diagnostics& diagnostics);
// Some or all of the records' lots.
void check_lots(const Records& records, std::span<const Lot* const> lots, const Date& today, Diagnostics& diagnostics);

// All of them.
void check_facts(const Records& records, const Date& today, Diagnostics& diagnostics);

} // namespace dyeleaf
