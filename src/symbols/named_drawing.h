#pragma once

#include "display/display_list.h"

#include <string>

namespace dyeleaf {

struct NamedDrawing {
    std::string name;
    DisplayList list; // 10 mm high
};

// How high every symbol is drawn, before it is scaled to its place.
inline constexpr Length symbol_height = mm(10);

} // namespace dyeleaf
