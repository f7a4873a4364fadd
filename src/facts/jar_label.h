// How large the labels of a straight-walled round jar are cut. Every length is rounded to a tenth of a millimetre.
#pragma once

#include "base/length.h"

namespace dyeleaf {

// How far a wrap-around label covers its own start.
Length wrap_overlap();
// Once round a wall of this diameter, and the overlap.
Length wrap_length(Length diameter);
// The part of the wall that faces whoever looks at the jar.
Length front_width(Length diameter);
// Two thirds of the way round, for a label that tells others all they need, and at least 74 mm.
Length give_width(Length diameter);
// A label on a straight wall of this height, clear of the bends above and below.
Length label_height(Length wall_height);
// A round label on a flat lid of this diameter, clear of its edge.
Length lid_label_diameter(Length lid);

} // namespace dyeleaf
