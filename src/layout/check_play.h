// Whether a back still looks right where it lands a little off its front.
#pragma once

#include "base/diagnostic.h"
#include "design/design.h"
#include "facts/items.h"
#include "layout/place.h"

namespace dyeleaf {

// How far a back may land off its front in an ordinary printer (common practice). Cut along the front's marks, the
// back is cut that far from where it should be.
constexpr Length back_play = mm(2);

// Warns of what a cut so far off its place would hit or leave a white rim beside: text and pictures closer to the edge
// of the back, and colours and lines that end near it, within or beyond.
void check_play(const Design& design, const Item& item, Size size, const Placement& back, Diagnostics& diagnostics);

} // namespace dyeleaf
