// A jar's girth out of its record.
#pragma once

#include "records/girth.h"
#include "source/fields.h"

#include <optional>

namespace dyeleaf {

// Exactly one of `diameter`, `circumference` and `strip`, each a length or {top: …, bottom: …} where the wall tapers.
// What no jar measures is an error that shows the arithmetic and what was probably meant.
std::optional<Girth> read_girth(Fields& jar);

// An error where the wall would lean more than 30°; `height` is upright, between the two places that were measured.
void check_lean(const Girth& girth, Length height, const Spot& spot, Diagnostics& diagnostics);

} // namespace dyeleaf
