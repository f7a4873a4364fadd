#include "facts/jar_label.h"

#include "facts/rounding.h"

#include <numbers>

namespace dyeleaf {

namespace {

// Label stock lies on the wall, so its middle runs round a circle that is one thickness wider. A tenth of a millimetre
// is usual for paper and film labels (common practice).
constexpr Length thickness = mm(0.1);

} // namespace

// Common practice: 3 to 6 mm.
Length wrap_overlap() {
    return mm(5);
}

Length wrap_length(Length diameter) {
    return cuttable(std::numbers::pi * (diameter + thickness) + wrap_overlap());
}

// 40 % of the circumference: New York State's rules on packages (section 221) take that much of a cylinder as the
// panel that is displayed.
Length front_width(Length diameter) {
    return cuttable(0.40 * std::numbers::pi * diameter);
}

// EU CLP Regulation 1272/2008, annex I, table 1.3: a label on a package of up to 3 litres is to be, if possible, at
// least 52 × 74 mm. Two thirds leave a gap at the back to see the powder through: common practice.
Length give_width(Length diameter) {
    return larger(mm(74), cuttable(std::numbers::pi * diameter * (2.0 / 3)));
}

// Common practice: 2 mm short of the bend at each end, or the label wrinkles.
Length label_height(Length wall_height) {
    return cuttable(wall_height - mm(2) * 2);
}

// Common practice: 1 mm clear of the edge all round.
Length lid_label_diameter(Length lid) {
    return cuttable(lid - mm(1) * 2);
}

} // namespace dyeleaf
