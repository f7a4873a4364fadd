// Stock solutions: dye dissolved beforehand, measured out by volume.
#pragma once

#include "base/quantity.h"

namespace dyeleaf {

// How much of a stock dyes `fibre` (dry) to `depth` (dye on weight of fibre). `stock` is weight by volume: 1 % is 1 g
// made up to 100 mL. Requires: a stock stronger than nothing.
Volume stock_volume(Mass fibre, Percent depth, Percent stock);

// What the facts state it for: 100 g of fibre and a stock of 1 %.
Volume stock_per_hundred_grams(Percent depth);

} // namespace dyeleaf
