// A colour that is read from a photograph, as records write it:
// {photo: sloe.jpg, swatch: {across: 10 to 45 %, down: 20 to 80 %}, grey: {across: …, down: …, lightness: 50}}
#pragma once

#include "records/records.h"
#include "source/document.h"

#include <optional>

namespace dyeleaf {

// Whether a map has a key that only such a colour has.
bool speaks_of_photo(const Node& node);

// Requires: a map.
std::optional<Sourced<RecordedColour>> read_photo_colour(const Node& node, Diagnostics& diagnostics);

} // namespace dyeleaf
