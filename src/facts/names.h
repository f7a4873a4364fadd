// Names that cannot be taken for another dye's: two lines may each have a Sloe.
#pragma once

#include "records/records.h"

#include <string>
#include <vector>

namespace dyeleaf {

// The other dyes of the same name; letters' case does not make a name another.
std::vector<const Dye*> namesakes(const Records& records, const Dye& dye);

// "Sloe"; "Sloe (Fenlight acid)" where another line has a Sloe; "Sloe (F-412)" where its own line has another.
std::string distinct_name(const Records& records, const Dye& dye);

} // namespace dyeleaf
