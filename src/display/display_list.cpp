#include "display/display_list.h"

#include "base/overloaded.h"

namespace dyeleaf {

namespace {

// How far the control points of a quarter circle of radius 1 lie along its tangents: 4/3 (√2 - 1). The curve then
// leaves the circle by at most 0.03 % of the radius.
constexpr double quarter_circle = 0.5522847498;

} // namespace

Path line_path(Point from, Point to) {
    return {MoveTo{from}, LineTo{to}};
}

Path rect_path(Rect rect) {
    return {MoveTo{rect.origin}, LineTo{{rect.right(), rect.top()}}, LineTo{{rect.right(), rect.bottom()}},
            LineTo{{rect.left(), rect.bottom()}}, ClosePath{}};
}

Path rounded_path(Rect rect, Length radius) {
    const Length r = smaller(radius, smaller(rect.size.width, rect.size.height) / 2);
    if (r <= Length{}) return rect_path(rect);

    const Length gap = r * (1 - quarter_circle); // from a corner to the control points beside it
    const Length left = rect.left();
    const Length top = rect.top();
    const Length right = rect.right();
    const Length bottom = rect.bottom();
    return {MoveTo{{left + r, top}},
            LineTo{{right - r, top}},
            CurveTo{{right - gap, top}, {right, top + gap}, {right, top + r}},
            LineTo{{right, bottom - r}},
            CurveTo{{right, bottom - gap}, {right - gap, bottom}, {right - r, bottom}},
            LineTo{{left + r, bottom}},
            CurveTo{{left + gap, bottom}, {left, bottom - gap}, {left, bottom - r}},
            LineTo{{left, top + r}},
            CurveTo{{left, top + gap}, {left + gap, top}, {left + r, top}},
            ClosePath{}};
}

Path circle_path(Point centre, Length radius) {
    const Length r = radius;
    const Length k = radius * quarter_circle;
    const auto at = [&](Length x, Length y) { return centre + Point{x, y}; };
    return {MoveTo{at(r, {})},
            CurveTo{at(r, k), at(k, r), at({}, r)},
            CurveTo{at(-k, r), at(-r, k), at(-r, {})},
            CurveTo{at(-r, -k), at(-k, -r), at({}, -r)},
            CurveTo{at(k, -r), at(r, -k), at(r, {})},
            ClosePath{}};
}

namespace {

DisplayItem in_grey(DisplayItem item) {
    std::visit(
        Overloaded{
            [](DrawPicture& picture) { picture.grey = true; },
            [](Group& group) { group.list = std::make_shared<const DisplayList>(dyeleaf::in_grey(*group.list)); },
            [](BeginTag&) {},
            [](EndTag&) {},
            [](auto& inked) { inked.colour = in_grey(inked.colour); },
        },
        item);
    return item;
}

} // namespace

DisplayList in_grey(const DisplayList& list) {
    DisplayList result{list.size, {}};
    result.items.reserve(list.items.size());
    for (const DisplayItem& item : list.items)
        result.items.push_back(in_grey(item));
    return result;
}

} // namespace dyeleaf
