// The outline of a drop of dye on wool: closed, smooth, never a circle.
#pragma once

#include "display/display_list.h"
#include "speckles/random.h"

namespace dyeleaf {

// Covers as much as a circle of `width`. `roughness` is how far its edge strays, as a share of its radius, 0 to 0.5;
// `points` is on how many points it hangs. The same seed gives the same outline in every size.
Path drop_path(Point centre, Length width, double roughness, int points, std::uint64_t seed);

// The points on which a drop of this width hangs: the finest five, the widest fourteen.
int drop_points(Length width);

// How much a closed path of lines and curves covers, in mm²; counted by turns where it crosses itself.
double covered(const Path& path);

} // namespace dyeleaf
