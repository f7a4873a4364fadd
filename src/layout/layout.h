// Boxes get sizes and places: a design filled with one item's facts becomes a display list. A pure function of its
// arguments; measuring is the same walk with the ink thrown away.
#pragma once

#include "base/diagnostic.h"
#include "base/sector.h"
#include "design/design.h"
#include "display/display_list.h"
#include "facts/items.h"
#include "text/typesetter.h"

#include <memory>
#include <optional>

namespace dyeleaf {

// How large a label is cut. One for a tapering wall is laid out on a rectangle and then bent.
struct LabelSize {
    Size size;                         // of the rectangle around it
    std::optional<Sector> sector = {}; // none: straight
};

struct PlacedLabel {
    std::shared_ptr<const DisplayList> front;
    std::shared_ptr<const DisplayList> back; // null where the design has none
};

// The label's size, from the design's shape and the item's facts; nothing and an error where a fact is missing or the
// length is not positive, or an arc too narrow for it. One below what the shape is made for is warned of.
std::optional<LabelSize> label_size(const Design& design, const Item& item, Diagnostics& diagnostics);

// The label of one item. Text that does not fit at its smallest size is cut with … and a warning that names item and
// box; a caution that does not fit, or that lies on a hole, an overlap or a colour, is an error; so is one missing.
PlacedLabel place_label(const Design& design, const Item& item, const LabelSize& size, const Typesetter& typesetter,
                        Diagnostics& diagnostics);

// For tests and people: every box of the front with its rectangle, one a line, indented.
std::string dump_boxes(const Design& design, const Item& item, Size size, const Typesetter& typesetter);

} // namespace dyeleaf
