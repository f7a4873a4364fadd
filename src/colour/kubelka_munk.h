// Kubelka and Munk's relation for a layer so thick that nothing shows through it, as yarn is: the share of light that
// comes back tells how much more it absorbs than it scatters.
#pragma once

namespace dyeleaf {

// K/S = (1 − R)² / 2R (P. Kubelka and F. Munk, 1931). R is meant from 0 to 1: a reader's 1.02 counts as 1, and less
// than a thousandth, which no yarn comes near, as a thousandth.
double absorption_ratio(double reflectance);

// Its inverse, R = 1 + K/S − √((K/S)² + 2 K/S): above 0, at most 1. Requires: a ratio that is not negative.
double reflectance_of(double absorption_ratio);

} // namespace dyeleaf
