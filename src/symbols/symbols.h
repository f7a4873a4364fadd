// Our own drawings of symbols: care treatments and hazard pictograms, by the geometry that the standards give in words.
// Care symbols are protected marks in some countries; whoever prints them there needs a licence.
#pragma once

#include "display/display_list.h"

#include <memory>
#include <string_view>

namespace dyeleaf {

// The drawing with this key, 10 mm high, to be scaled: "care/wash 30 gentle", "ghs/GHS07". The one for mono printing
// has no colour but black. Null for an unknown key; the same object for the same symbol.
std::shared_ptr<const DisplayList> symbol_drawing(std::string_view key, bool mono);

// What a symbol asks for on paper.
struct SymbolRules {
    Length least_height;
    bool is_hazard = false; // one that is too small is an error
};
// Requires: a key that has a drawing.
SymbolRules symbol_rules(std::string_view key);

} // namespace dyeleaf
