// Every symbol that can be printed, by its key: "care/wash 30 gentle" for a treatment, "ghs/GHS07" for a pictogram. The
// drawings are our own, after the geometry that the standards give in words. Care symbols are protected marks in some
// countries; whoever prints them there may need a licence.
#pragma once

#include "display/display_list.h"

#include <memory>
#include <string_view>
#include <vector>

namespace dyeleaf {

// Care symbols as they follow one another on a label, then pictograms by number.
std::vector<std::string_view> symbol_keys();

// The drawing, 10 mm high, to be scaled; in black alone where `mono`. Null for a key that is none of symbol_keys. The
// same list each time, so that a file holds it once.
std::shared_ptr<const DisplayList> symbol_drawing(std::string_view key, bool mono);

} // namespace dyeleaf
