// How fine a yarn is, in the systems that spinners and weavers use.
#pragma once

#include "base/length.h"
#include "base/quantity.h"

namespace dyeleaf {

// Grams in a kilometre, or kilometres in a kilogram; the English counts tell how many hanks of their length there are
// in a pound. All are of the yarn as it is, all its plies together.
struct YarnCounts {
    double tex = 0;
    double dtex = 0;    // g in 10 km
    double denier = 0;  // g in 9 km
    double metric = 0;  // Nm: km in 1 kg
    double worsted = 0; // hanks of 560 yd in a pound
    double cotton = 0;  // Ne: hanks of 840 yd in a pound
};

// Requires: both more than nothing.
YarnCounts yarn_counts(Mass mass, Length length);

// How much of a yarn weighs `mass`, by a skein of it. Requires: a skein that weighs more than nothing.
Length length_in(Mass mass, Mass skein_mass, Length skein_length);

} // namespace dyeleaf
