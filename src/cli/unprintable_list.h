// The colours that no print shows as they are, for the terminal.
#pragma once

#include "records/records.h"

#include <string>

namespace dyeleaf {

// Those stronger than print can show, with how far they are beyond it, and those that glow; empty where there are none.
std::string list_unprintable_colours(const Records& records);

} // namespace dyeleaf
