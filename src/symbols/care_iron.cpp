#include "symbols/care_groups.h"
#include "symbols/care_ink.h"

namespace dyeleaf::care {

namespace {

// Shrunk from the upper left to these shares of its width and height.
DisplayList iron(int dots, double across = 1, double down = 1) {
    const auto on = [&](double x, double y) { return at(0.3 + (x - 0.3) * across, 1.2 + (y - 1.2) * down); };
    DisplayList list = blank(on(11.1, 0).x + mm(0.3));
    stroke(list, {MoveTo{on(3.6, 1.2)}, LineTo{on(8.1, 1.2)}, CurveTo{on(8.9, 1.2), on(9.3, 1.6), on(9.5, 2.3)},
                  LineTo{on(11.1, 7.5)}, LineTo{on(0.3, 7.5)}, CurveTo{on(0.3, 5.6), on(2.2, 4.1), on(4.6, 4.1)},
                  LineTo{on(10.05, 4.1)}});
    for (int i = 0; i < dots; ++i)
        dot(list, on(6.1 + 1.7 * (i - (dots - 1) / 2.0), 5.8));
    return list;
}

// The iron is flatter here, to give the steam room: two jets, which a flat cross meets well away from each other.
DisplayList without_steam() {
    DisplayList list = iron(0, 0.92, 0.72);
    const Length fine = mm(0.45);
    for (const double x : {4.15, 6.45})
        stroke(list, line_path(at(x, 6.6), at(x, 9.5)), fine);
    stroke(list, {MoveTo{at(1.9, 6.5)}, LineTo{at(8.7, 9.6)}, MoveTo{at(8.7, 6.5)}, LineTo{at(1.9, 9.6)}}, fine);
    return list;
}

DisplayList no_iron() {
    DisplayList list = iron(0);
    cross_out(list);
    return list;
}

} // namespace

std::vector<NamedDrawing> iron_symbols() {
    return {{"iron high", iron(3)},
            {"iron medium", iron(2)},
            {"iron low", iron(1)},
            {"iron no steam", without_steam()},
            {"no iron", no_iron()}};
}

} // namespace dyeleaf::care
