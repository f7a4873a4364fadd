// Bends what was laid out on a rectangle, for the wall of a tapering jar or the rim of a lid. Lines, colours and
// patterns follow the arc. Letters keep their shape and size and stand upright on it, each at its own angle, with their
// distances where they stand closest; symbols, pictures and other groups are turned as they are.
#pragma once

#include "base/quad.h"
#include "base/sector.h"
#include "display/display_list.h"

namespace dyeleaf {

// `flat` lies on the rectangle `sector.flat()`; the result in the rectangle `sector.bounds()`. Each word of a tagged
// text becomes a spelled part.
DisplayList bend(const DisplayList& flat, const Sector& sector);

// Leaves the true curve by less than a thousandth of a millimetre.
Path bend(const Path& path, const Sector& sector);

// How long a line of text on `baseline` may be for the arc to hold it within `angle` radians.
Length room_on_arc(const Sector& sector, Length baseline, Length size, double angle);

// Where the capitals of a run stand, from baseline to top.
Quad letter_box(const DrawRun& draw);

} // namespace dyeleaf
