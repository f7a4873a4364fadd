// Stock solutions: dye dissolved beforehand and measured out.
#pragma once

#include "base/quantity.h"
#include "records/recipe.h"

namespace dyeleaf {

// How much of a stock dyes `fibre` (dry) to `depth` (dye on weight of fibre). Requires: a stock stronger than nothing.
Volume stock_volume(Mass fibre, Percent depth, WeightInVolume stock);
Mass stock_mass(Mass fibre, Percent depth, WeightInWeight stock);

// What the facts state it for: 100 g of fibre and a stock of 1 %, weight in volume.
Volume stock_per_hundred_grams(Percent depth);

} // namespace dyeleaf
