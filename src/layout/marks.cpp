#include "layout/marks.h"

namespace dyeleaf {

namespace {

constexpr Rgb mark_colour{0.55, 0.55, 0.55};
constexpr Length mark_width = pt(0.35);

DisplayItem dashed_line(Point from, Point to) {
    return StrokePath{line_path(from, to), mark_colour, mark_width, {mm(1.2), mm(1.2)}};
}

DisplayItem line_along(Edge edge, Length at, Size size) {
    switch (edge) {
    case Edge::left: return dashed_line({at, {}}, {at, size.height});
    case Edge::right: return dashed_line({size.width - at, {}}, {size.width - at, size.height});
    case Edge::top: return dashed_line({{}, at}, {size.width, at});
    case Edge::bottom: return dashed_line({{}, size.height - at}, {size.width, size.height - at});
    }
    return dashed_line({}, {});
}

} // namespace

Rect hole_rect(const Hole& hole, Size size) {
    const Point centre{hole.x.value_or(size.width / 2), hole.y.value_or(size.height / 2)};
    return {{centre.x - hole.diameter / 2, centre.y - hole.diameter / 2}, {hole.diameter, hole.diameter}};
}

Rect edge_strip(Edge edge, Length depth, Size size) {
    switch (edge) {
    case Edge::left: return {{}, {depth, size.height}};
    case Edge::right: return {{size.width - depth, {}}, {depth, size.height}};
    case Edge::top: return {{}, {size.width, depth}};
    case Edge::bottom: return {{{}, size.height - depth}, {size.width, depth}};
    }
    return {};
}

Rect fold_line(Edge from, Length at, Size size) {
    const Rect near_side = edge_strip(from, at, size);
    constexpr Length sliver = mm(0.1);
    switch (from) {
    case Edge::left: return {{near_side.right(), {}}, {sliver, size.height}};
    case Edge::right: return {{near_side.left(), {}}, {sliver, size.height}};
    case Edge::top: return {{{}, near_side.bottom()}, {size.width, sliver}};
    case Edge::bottom: return {{{}, near_side.top()}, {size.width, sliver}};
    }
    return {};
}

Rect mirrored(Rect rect, Size size) {
    return {{size.width - rect.right(), rect.top()}, rect.size};
}

std::vector<DisplayItem> draw_hole(const Hole& hole, Size size) {
    const Point centre = hole_rect(hole, size).centre();
    constexpr Length arm = mm(0.8);
    return {
        StrokePath{circle_path(centre, hole.diameter / 2), mark_colour, mark_width, {}},
        StrokePath{line_path({centre.x - arm, centre.y}, {centre.x + arm, centre.y}), mark_colour, mark_width, {}},
        StrokePath{line_path({centre.x, centre.y - arm}, {centre.x, centre.y + arm}), mark_colour, mark_width, {}},
    };
}

DisplayItem draw_fold(Edge from, Length at, Size size) {
    return line_along(from, at, size);
}

DisplayItem draw_overlap(Edge edge, Length depth, Size size) {
    return line_along(edge, depth, size);
}

} // namespace dyeleaf
