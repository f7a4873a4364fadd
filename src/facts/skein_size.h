// What the skeins of a lot hold: as the base has it, unless the lot says that they are lighter or heavier.
#pragma once

#include "records/records.h"

#include <optional>

namespace dyeleaf {

// A skein of this weight of the same yarn; its length goes with its weight.
SkeinSize skein_of(const SkeinSize& yarn, const SkeinFigure<Mass>& mass);

// Of the whole skeins of a lot.
SkeinSize skein_size(const Base& base, const Lot& lot);
// Of one skein by its number.
SkeinSize skein_size(const Base& base, const Lot& lot, int number);

// The price of one skein by its number: an odd one has its own or none.
std::optional<Price> skein_price(const Lot& lot, int number);

} // namespace dyeleaf
