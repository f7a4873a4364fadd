// What makes a colour doubtful that was read from a photograph.
#pragma once

#include "base/diagnostic.h"
#include "records/records.h"

#include <optional>
#include <string>

namespace dyeleaf {

// Nothing is said of colours that come from elsewhere. `whose` names it: "Sloe at 2 % on Plain Sock". The figures from
// which on something is doubtful are our own.
void check_photo(const std::optional<Sourced<RecordedColour>>& colour, const std::string& whose,
                 Diagnostics& diagnostics);

} // namespace dyeleaf
