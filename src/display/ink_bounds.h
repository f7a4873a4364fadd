// Where a list can leave ink.
#pragma once

#include "display/display_list.h"

namespace dyeleaf {

// The rectangle around all of it, and no smaller: of letters and pointed corners as far as any may reach.
Rect ink_bounds(const DisplayList& list);

} // namespace dyeleaf
