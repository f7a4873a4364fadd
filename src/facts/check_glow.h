// Curves that throw back more light than falls on them.
#pragma once

#include "base/diagnostic.h"
#include "records/records.h"

#include <optional>
#include <string>

namespace dyeleaf {

// A warning where a colour that nobody calls fluorescent goes over 100 %: it glows, or the instrument was set wrong.
void check_glow(const std::optional<Sourced<RecordedColour>>& colour, const std::string& whose,
                Diagnostics& diagnostics);

} // namespace dyeleaf
