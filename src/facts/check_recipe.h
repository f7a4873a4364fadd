// What is better known before a lot is dyed.
#pragma once

#include "base/diagnostic.h"
#include "records/records.h"

namespace dyeleaf {

// Warns of amounts too small to be weighed or measured, and of a dry weight that cannot be that of these skeins.
void check_recipe(const Records& records, const Lot& lot, Diagnostics& diagnostics);

} // namespace dyeleaf
