#include "symbols/ghs.h"

#include <utility>

namespace dyeleaf {

namespace {

constexpr Point ball = at(50, 61);

// A splinter that flies from the ball, `degrees` from straight up, as far as `reach` units from its middle.
Path splinter(double degrees, double reach) {
    const Path upright = {MoveTo{ball - at(0, 16.5)}, LineTo{ball - at(-3.3, 22)}, LineTo{ball - at(0, reach)},
                          LineTo{ball - at(3.3, 22)}, ClosePath{}};
    return transformed(upright, turned_about(ball, degrees));
}

// A crumb, likewise.
Path crumb(double degrees, double reach) {
    const Path upright = {MoveTo{ball - at(2, reach)}, LineTo{ball - at(-1.2, reach + 1.4)},
                          LineTo{ball - at(-1.8, reach - 2.4)}, LineTo{ball - at(0.6, reach - 3.2)}, ClosePath{}};
    return transformed(upright, turned_about(ball, degrees));
}

} // namespace

// A ball that bursts, its upper half in cracks.
Ink exploding_bomb() {
    Ink ink = {
        dot(ball, units(14)),
        StrokePath{path_of("M 47 46 L 51.4 51.6 L 46.6 55 L 51 60.4 M 51.4 51.6 L 57.6 53.4 L 57.4 57.6 L 61.4 60 "
                           "M 46.6 55 L 41 54.4 L 39.8 58.6"),
                   white,
                   units(1.9),
                   {}}};
    for (const auto& [degrees, reach] : {std::pair{2.0, 44.0},
                                         {-24.0, 33.0},
                                         {27.0, 32.0},
                                         {-45.0, 36.0},
                                         {48.0, 35.0},
                                         {-68.0, 28.5},
                                         {70.0, 28.5},
                                         {-90.0, 27.5},
                                         {91.0, 27.5}}) {
        ink.emplace_back(filled(splinter(degrees, reach)));
    }
    for (const auto& [degrees, reach] :
         {std::pair{-12.0, 36.0}, {15.0, 37.0}, {-35.0, 36.0}, {37.5, 35.0}, {-57.0, 32.0}, {59.0, 33.0}}) {
        ink.emplace_back(filled(crumb(degrees, reach)));
    }
    return ink;
}

} // namespace dyeleaf
