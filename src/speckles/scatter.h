// Where specks of dye come to lie on yarn, and how wide each of them gets.
#pragma once

#include "base/geometry.h"
#include "base/quantity.h"

#include <cstdint>
#include <vector>

namespace dyeleaf {

struct Speck {
    Point at;               // its middle, on the tile
    Length width;           // once wetted
    bool is_whole = false;  // as wide as the recorded spread
    std::uint64_t seed = 0; // of its outline
};

// Specks are scattered over a square that repeats in both directions without a seam.
inline constexpr Length tile_side = mm(100);

// As many as the density asks for, at least one: one in three is whole, the others are finer grains that show when the
// powder opens up in the wet (common practice: about a third of what is seen in the end is laid down dry). No two lie
// nearer than the least distance, whole ones as far apart as their own number allows, and fine ones, where there is
// room, clear of the others. The same seed gives the same specks.
std::vector<Speck> scatter(std::uint64_t seed, Length spread, ArealDensity density);

// 0.7 times the side of the square that each speck would have to itself: blue noise, since points thrown at random
// reach 0.83 before no other fits (random sequential adsorption of discs jams at a cover of 0.547).
Length least_distance(ArealDensity density);

// The shortest way between two places of the repeating tile.
Length distance_on_tile(Point a, Point b);

} // namespace dyeleaf
