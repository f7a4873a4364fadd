#include "base/geometry.h"

#include "base/number.h"

#include <algorithm>
#include <array>

namespace dyeleaf {

Rect Transform::bounds(Rect rect) const {
    const std::array corners = {apply(rect.origin), apply({rect.right(), rect.top()}),
                                apply({rect.left(), rect.bottom()}), apply({rect.right(), rect.bottom()})};
    Point least = corners[0];
    Point most = corners[0];
    for (const Point& corner : corners) {
        least = {smaller(least.x, corner.x), smaller(least.y, corner.y)};
        most = {larger(most.x, corner.x), larger(most.y, corner.y)};
    }
    return {least, {most.x - least.x, most.y - least.y}};
}

Transform Transform::after(const Transform& inner) const {
    const Point shift = apply({inner.dx, inner.dy});
    return {a * inner.a + c * inner.b,
            b * inner.a + d * inner.b,
            a * inner.c + c * inner.d,
            b * inner.c + d * inner.d,
            shift.x,
            shift.y};
}

Transform turned(Turn turn, Size size) {
    switch (turn) {
    case Turn::none: return {};
    case Turn::right: return {0, 1, -1, 0, size.height, {}};
    case Turn::half: return {-1, 0, 0, -1, size.width, size.height};
    case Turn::left: return {0, -1, 1, 0, {}, size.width};
    }
    return {};
}

Size turned_size(Turn turn, Size size) {
    const bool on_side = turn == Turn::right || turn == Turn::left;
    return on_side ? Size{size.height, size.width} : size;
}

std::string to_string(Length length) {
    return decimal(length.in_mm(), 2) + " mm";
}

std::string to_string(Rect rect) {
    return decimal(rect.left().in_mm(), 2) + "," + decimal(rect.top().in_mm(), 2) + " " +
           decimal(rect.size.width.in_mm(), 2) + "x" + decimal(rect.size.height.in_mm(), 2);
}

} // namespace dyeleaf
