// The outline of a matrix's dark modules.
#pragma once

#include "codes/code.h"

#include <vector>

namespace dyeleaf {

// A corner, in modules, and which way the dark lies from it: -1 or 1 in x and y.
struct OutlineCorner {
    int x = 0, y = 0;
    int inward_x = 0, inward_y = 0;
};

// Closed, each around a dark region or a white one within it, with the dark on its right hand: clockwise where y runs
// down, so that one filling leaves the white ones out. Regions that meet in a corner alone are two.
std::vector<std::vector<OutlineCorner>> outlines(const Code& code);

} // namespace dyeleaf
