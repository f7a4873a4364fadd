// How large the labels of a round jar are cut. Every length is rounded to a tenth of a millimetre.
#pragma once

#include "base/length.h"
#include "records/girth.h"

#include <optional>

namespace dyeleaf {

// The part of a jar's wall that a label covers.
struct Wall {
    Length top, bottom; // diameters at the label's edges
    Length height;      // between them, upright
    [[nodiscard]] Length middle() const { return (top + bottom) / 2; }
};
// Of a wall that is `height` tall from bend to bend: the label stays clear of both.
Wall wall_of(const Girth& girth, Length height);

// How far a wrap-around label covers its own start.
Length wrap_overlap();
// Once round a wall of this diameter, and the overlap.
Length wrap_length(Length diameter);
// The part of the wall that faces whoever looks at the jar.
Length front_width(Length diameter);
// Two thirds of the way round, for a label that tells others all they need, and at least 74 mm.
Length give_width(Length diameter);
// From edge to edge along the wall.
Length label_height(const Wall& wall);
// The radius of the arc on which the middle of a label of this width lies, where it has to be cut as a sector of a
// ring: below 0 where the jar is wider below, so that the centre lies above. Nothing where a rectangle will do.
std::optional<Length> arc_of(const Wall& wall, Length width);
// A round label on a flat lid of this diameter, clear of its edge.
Length lid_label_diameter(Length lid);

} // namespace dyeleaf
