#include "symbols/care_groups.h"
#include "symbols/care_ink.h"

namespace dyeleaf::care {

namespace {

constexpr Length width = mm(11.4);

// Standing `raised` above the baseline.
DisplayList iron(int dots, Length raised = {}) {
    const auto on = [&](double x, double y) { return at(x, y) - Point{{}, raised}; };
    DisplayList list = blank(width);
    stroke(list, {MoveTo{on(3.6, 1.2)}, LineTo{on(8.1, 1.2)}, CurveTo{on(8.9, 1.2), on(9.3, 1.6), on(9.5, 2.3)},
                  LineTo{on(11.1, 7.5)}, LineTo{on(0.3, 7.5)}, CurveTo{on(0.3, 5.6), on(2.2, 4.1), on(4.6, 4.1)},
                  LineTo{on(10.05, 4.1)}});
    for (int i = 0; i < dots; ++i)
        dot(list, on(6.1 + 1.7 * (i - (dots - 1) / 2.0), 5.8));
    return list;
}

DisplayList without_steam() {
    DisplayList list = iron(0, mm(0.9));
    for (const double x : {4.6, 6.6})
        stroke(list, line_path(at(x, 7.5), at(x, 9.7)));
    stroke(list, {MoveTo{at(3.2, 7.5)}, LineTo{at(8.0, 9.7)}, MoveTo{at(8.0, 7.5)}, LineTo{at(3.2, 9.7)}});
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
