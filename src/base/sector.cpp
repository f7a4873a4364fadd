#include "base/sector.h"

#include <cmath>
#include <numbers>

namespace dyeleaf {

Size Sector::bounds() const {
    const double half = angle / 2;
    const Length width = half < std::numbers::pi / 2 ? outer * (2 * std::sin(half)) : outer * 2;
    // Its far corners lie on the inner edge up to half a ring, on the outer one beyond.
    const Length depth = (std::cos(half) > 0 ? inner : outer) * std::cos(half);
    return {width, outer - depth};
}

Point Sector::centre() const {
    const Size size = bounds();
    return {size.width / 2, centre_below ? outer : size.height - outer};
}

double Sector::turn_at(Length x) const {
    const double turn = (x - flat().width / 2) / inner;
    return centre_below ? turn : -turn;
}

Point Sector::at(Point flat) const {
    const double turn = turn_at(flat.x);
    const Length radius = radius_at(flat.y) * (centre_below ? 1.0 : -1.0);
    return centre() + Point{radius * std::sin(turn), radius * -std::cos(turn)};
}

} // namespace dyeleaf
