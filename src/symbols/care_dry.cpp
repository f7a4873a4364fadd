#include "symbols/care_groups.h"
#include "symbols/care_ink.h"

namespace dyeleaf::care {

namespace {

constexpr Length side = baseline - body_top;

// In the middle of a list of this width.
constexpr Rect frame_in(Length width) {
    return {{(width - side) / 2, body_top}, {side, side}};
}

DisplayList square(Length width = side + pen_width) {
    DisplayList list = blank(width);
    stroke(list, rect_path(frame_in(width)));
    return list;
}

DisplayList drum(Length width = side + pen_width) {
    DisplayList list = square(width);
    stroke(list, circle_path(frame_in(width).centre(), mm(2.3)));
    return list;
}

DisplayList tumble(int dots) {
    DisplayList list = drum();
    const Point centre = frame_in(list.size.width).centre();
    for (int i = 0; i < dots; ++i)
        dot(list, centre + Point{mm(1.7) * (i - (dots - 1) / 2.0), {}});
    return list;
}

DisplayList no_tumble() {
    DisplayList list = drum(cross_width);
    cross_out(list);
    return list;
}

enum class Lines { upright, flat };

DisplayList natural(Lines lines, int count, bool shade) {
    DisplayList list = square();
    const Rect frame = frame_in(list.size.width);
    const Point centre = frame.centre();
    const Length half = mm(2.0);
    for (int i = 0; i < count; ++i) {
        const Length aside = mm(1.7) * (i - (count - 1) / 2.0);
        if (lines == Lines::upright) {
            stroke(list, line_path(centre + Point{aside, -half}, centre + Point{aside, half}));
        } else {
            stroke(list, line_path(centre + Point{-half, aside}, centre + Point{half, aside}));
        }
    }
    const Length cut = mm(2.3);
    if (shade) {
        stroke(list, line_path({frame.left(), frame.top() + cut}, {frame.left() + cut, frame.top()}));
    }
    return list;
}

} // namespace

std::vector<NamedDrawing> dry_symbols() {
    return {{"tumble normal", tumble(2)},
            {"tumble low", tumble(1)},
            {"no tumble", no_tumble()},
            {"dry line", natural(Lines::upright, 1, false)},
            {"dry drip line", natural(Lines::upright, 2, false)},
            {"dry flat", natural(Lines::flat, 1, false)},
            {"dry drip flat", natural(Lines::flat, 2, false)},
            {"dry line shade", natural(Lines::upright, 1, true)},
            {"dry drip line shade", natural(Lines::upright, 2, true)},
            {"dry flat shade", natural(Lines::flat, 1, true)},
            {"dry drip flat shade", natural(Lines::flat, 2, true)}};
}

} // namespace dyeleaf::care
