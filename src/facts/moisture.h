// The water that fibres hold by agreement.
#pragma once

#include "records/records.h"

#include <optional>

namespace dyeleaf {

// The agreed allowance of the whole yarn, on its dry mass; nothing where it holds a fibre of which none is known. Wool
// and hair count as carded where nothing else is recorded, as the regulation asks.
std::optional<Percent> agreed_allowance(const Base& base);

// What a mass that holds the allowance weighs without it.
Mass dry_mass(Mass mass, Percent allowance);

} // namespace dyeleaf
