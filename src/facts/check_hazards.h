// What a record leaves open of the supplier's sheet.
#pragma once

#include "base/diagnostic.h"
#include "records/records.h"

namespace dyeleaf {

// Warns of a code whose label depends on a category that is not recorded, and of statements with blanks that the sheet
// fills in and the record does not.
void check_hazards(const Dye& dye, Diagnostics& diagnostics);
void check_hazards(const Ingredient& ingredient, Diagnostics& diagnostics);

} // namespace dyeleaf
