// The care symbols, family by family, in the order in which ISO 3758 lists them.
#pragma once

#include "display/display_list.h"

#include <string_view>

namespace dyeleaf::drawing {

// Bars below are written as a count: 0, 1 (mild) or 2 (very mild).
DisplayList wash(std::string_view temperature, int bars);
DisplayList hand_wash(int bars);
DisplayList no_wash();

enum class Bleach { any, oxygen, none };
DisplayList bleach(Bleach bleach);

DisplayList tumble(int dots); // 0: do not
enum class Drying { line, drip_line, flat, drip_flat };
DisplayList natural_drying(Drying drying, bool shade);

DisplayList iron(int dots); // 0: do not
DisplayList iron_without_steam();

DisplayList professional(std::string_view letter, int bars);
DisplayList no_dry_clean();
DisplayList no_wet_clean();

} // namespace dyeleaf::drawing
