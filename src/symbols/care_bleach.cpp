#include "symbols/care_groups.h"
#include "symbols/care_ink.h"

namespace dyeleaf::care {

namespace {

constexpr Length width = mm(9.5);
constexpr Point apex{width / 2, body_top};
constexpr Point left{mm(0.3), baseline};
constexpr Point right{width - mm(0.3), baseline};

DisplayList triangle() {
    DisplayList list = blank(width);
    stroke(list, {MoveTo{apex}, LineTo{right}, LineTo{left}, ClosePath{}});
    return list;
}

// From the base, this share of it from the left, to the right side.
Path oblique(double share) {
    const auto between = [](Point a, Point b, double part) {
        return Point{a.x + (b.x - a.x) * part, a.y + (b.y - a.y) * part};
    };
    return line_path(between(left, right, share), between(apex, right, share));
}

} // namespace

std::vector<NamedDrawing> bleach_symbols() {
    DisplayList oxygen = triangle();
    stroke(oxygen, oblique(0.31));
    stroke(oxygen, oblique(0.56));
    DisplayList none = triangle();
    cross_out(none);
    return {{"any bleach", triangle()}, {"oxygen bleach", oxygen}, {"no bleach", none}};
}

} // namespace dyeleaf::care
