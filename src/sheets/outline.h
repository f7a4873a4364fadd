// The outlines of labels.
#pragma once

#include "sheets/impose.h"

namespace dyeleaf {

// The ellipse that touches all four sides.
Path ellipse_path(Rect rect);

// Everything of a label that may be seen: its trim and the bleed around it, in the label's own coordinates.
Path visible_part(const Trim& trim, Length bleed);

// Where film is trimmed that reaches so far beyond the trim, or a little farther; corners are rounded.
Path film_outline(const Trim& trim, Length film);

} // namespace dyeleaf
