// The marks that a label's shape asks for: where to punch, fold and overlap. They lie under everything else.
#pragma once

#include "design/design.h"
#include "display/display_list.h"

#include <vector>

namespace dyeleaf {

// A hole's disc on a label of `size`.
Rect hole_rect(const Hole& hole, Size size);
// The strip along an edge of a label of `size`.
Rect edge_strip(Edge edge, Length depth, Size size);

// The line along which a label is folded, as a sliver.
Rect fold_line(Edge from, Length at, Size size);

// A place on the front of a label of `size` as it is seen from its back, turned over like a page.
Rect mirrored(Rect rect, Size size);

std::vector<DisplayItem> draw_hole(const Hole& hole, Size size);
// A dashed line across, `at` from the edge.
DisplayItem draw_fold(Edge from, Length at, Size size);
// A dashed line where the overlapping strip begins.
DisplayItem draw_overlap(Edge edge, Length depth, Size size);

} // namespace dyeleaf
