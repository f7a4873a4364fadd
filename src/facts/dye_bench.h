// The arithmetic of the dye bench: depth of shade, stock solutions, water, acid. Depths are dye on the dry weight
// of fibre.
#pragma once

#include "base/quantity.h"
#include "records/recipe.h"

namespace dyeleaf {

Mass dye_for(Mass fibre, Percent depth);
// Requires: some fibre.
Percent depth_of(Mass dye, Mass fibre);

// The whole bath, stock solutions among it.
Volume bath_for(Mass fibre, LiquorRatio ratio);

// Anhydrous citric acid as vinegar of 5 % (5 g of acetic acid in 100 mL), counted by all the acid there is in either.
// The two baths then do not have the same pH.
Volume vinegar_for(Mass citric_acid);

} // namespace dyeleaf
