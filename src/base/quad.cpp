#include "base/quad.h"

#include <algorithm>
#include <cmath>

namespace dyeleaf {

namespace {

// From the lowest to the highest of the corners along a direction.
std::pair<Length, Length> shadow(const Quad& quad, Point direction) {
    const double reach = std::hypot(direction.x.in_mm(), direction.y.in_mm());
    const auto along = [&](Point p) {
        return p.x * (direction.x.in_mm() / reach) + p.y * (direction.y.in_mm() / reach);
    };
    const auto [least, most] = std::ranges::minmax(quad.corners, {}, along);
    return {along(least), along(most)};
}

// Convex shapes are apart where a line along a side of one of them parts them.
bool are_parted_by_a_side(const Quad& a, const Quad& b) {
    for (std::size_t i = 0; i < a.corners.size(); ++i) {
        const Point side = a.corners[(i + 1) % a.corners.size()] - a.corners[i];
        if (near(side.x, Length{}) && near(side.y, Length{})) continue;
        const auto [a_least, a_most] = shadow(a, {-side.y, side.x});
        const auto [b_least, b_most] = shadow(b, {-side.y, side.x});
        if (fits(a_most, b_least) || fits(b_most, a_least)) return true;
    }
    return false;
}

} // namespace

Rect Quad::bounds() const {
    const auto x = std::ranges::minmax(corners, {}, &Point::x);
    const auto y = std::ranges::minmax(corners, {}, &Point::y);
    return {{x.min.x, y.min.y}, {x.max.x - x.min.x, y.max.y - y.min.y}};
}

Quad quad_of(const Transform& transform, Rect rect) {
    return {{transform.apply(rect.origin), transform.apply({rect.right(), rect.top()}),
             transform.apply({rect.right(), rect.bottom()}), transform.apply({rect.left(), rect.bottom()})}};
}

bool overlap(const Quad& a, const Quad& b) {
    return !are_parted_by_a_side(a, b) && !are_parted_by_a_side(b, a);
}

} // namespace dyeleaf
