// What can be read on a colour.
#pragma once

#include "base/colour.h"

namespace dyeleaf {

// 1 (none) to 21 (black on white), whichever is the lighter.
double contrast_ratio(Rgb a, Rgb b);
// The ink with more contrast on a ground of this colour.
Rgb black_or_white_on(Rgb ground);

} // namespace dyeleaf
