// A list in other colours.
#pragma once

#include "display/display_list.h"

#include <functional>

namespace dyeleaf {

// Every ink as `colour_for` has it; pictures stay as they are.
DisplayList recoloured(const DisplayList& list, const std::function<Rgb(Rgb)>& colour_for);

} // namespace dyeleaf
