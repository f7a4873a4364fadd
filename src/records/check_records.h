// The rules that need more than one record.
#pragma once

#include "base/diagnostic.h"
#include "records/records.h"

namespace dyeleaf {

// Complains about ids used twice, references to nothing, mixes without a dye and dyes that cannot be told apart; takes
// out what came second, adds the salt that every studio has, and says of each part of a mix whether it is a dye.
void check_records(Records& records, Diagnostics& diagnostics);

} // namespace dyeleaf
