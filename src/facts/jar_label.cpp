#include "facts/jar_label.h"

#include "facts/cone.h"
#include "facts/rounding.h"

#include <numbers>

namespace dyeleaf {

// Common practice: 2 mm short of the bend at each end, or the label wrinkles.
Wall wall_of(const Girth& girth, Length height) {
    return {diameter_from(girth.by, girth.top), diameter_from(girth.by, girth.bottom), height - mm(2) * 2};
}

// Common practice: 3 to 6 mm.
Length wrap_overlap() {
    return mm(5);
}

Length wrap_length(Length diameter) {
    return cuttable(std::numbers::pi * (diameter + label_thickness) + wrap_overlap());
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

Length label_height(const Wall& wall) {
    return cuttable(slope_of(wall.top, wall.bottom, wall.height));
}

// A rectangle whose edges would dip by a millimetre or less can be pressed on straight: common practice.
std::optional<Length> arc_of(const Wall& wall, Length width) {
    const auto cone = flat_cone(wall.top + label_thickness, wall.bottom + label_thickness, wall.height);
    if (!cone || fits(dip(width, cone->middle()), mm(1))) return std::nullopt;
    return wall.top > wall.bottom ? cone->middle() : -cone->middle();
}

// Common practice: 1 mm clear of the edge all round.
Length lid_label_diameter(Length lid) {
    return cuttable(lid - mm(1) * 2);
}

} // namespace dyeleaf
