#pragma once

#include "display/display_list.h"

namespace dyeleaf {

// The ellipse that touches all four sides.
Path ellipse_path(Rect rect);

} // namespace dyeleaf
