// What becomes of a rectangle that goes round a cone or a disc: a piece of a ring, standing upright on its middle.
#pragma once

#include "base/geometry.h"

namespace dyeleaf {

struct Sector {
    Length inner, outer;      // radii of its two edges
    double angle = 0;         // the whole, in radians
    bool centre_below = true; // it arches like a rainbow; otherwise it hangs like a necklace

    // The rectangle around it, whose top left corner is the origin of its own coordinates.
    [[nodiscard]] Size bounds() const;
    // Of its circles, in those coordinates.
    [[nodiscard]] Point centre() const;
    // The rectangle whose points it shares out: as wide as its inner edge is long, so that nothing is ever squeezed.
    [[nodiscard]] Size flat() const { return {inner * angle, outer - inner}; }

    // Where a point of the flat rectangle comes to lie: x goes round, y goes along the radius.
    [[nodiscard]] Point at(Point flat) const;
    // How far what stands upright at `x` of the flat rectangle is turned clockwise there, in radians.
    [[nodiscard]] double turn_at(Length x) const;
    // From the centre to where `y` of the flat rectangle lies.
    [[nodiscard]] Length radius_at(Length y) const { return centre_below ? outer - y : inner + y; }

    friend bool operator==(const Sector&, const Sector&) = default;
};

} // namespace dyeleaf
