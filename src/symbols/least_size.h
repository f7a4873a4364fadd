// How small a symbol may be printed.
#pragma once

#include "base/geometry.h"

#include <string_view>

namespace dyeleaf {

// What a symbol asks for on paper.
struct SymbolRules {
    Length least_height;
    bool is_hazard = false; // a pictogram that is too small is an error
};
SymbolRules symbol_rules(std::string_view key);

// The height of a pictogram whose frame, a square set on a point, has this side.
Length pictogram_height(Length side);

// The side of a pictogram on a label with which a container of up to 3 litres is handed on: a fifteenth of the label's
// area and never below 10 mm. 52 × 74 mm, the size to aim at, give 16 mm.
Length supply_pictogram_side(Size label);

} // namespace dyeleaf
