// The outlines of labels.
#pragma once

#include "sheets/impose.h"

namespace dyeleaf {

// The ellipse that touches all four sides.
Path ellipse_path(Rect rect);

// Everything of a label that may be seen: its trim and the bleed around it, in the label's own coordinates.
Path visible_part(const Trim& trim, Length bleed);

} // namespace dyeleaf
