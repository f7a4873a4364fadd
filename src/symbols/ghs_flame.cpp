#include "symbols/ghs.h"

#include <utility>

namespace dyeleaf {

namespace {

// Three tongues round a bare one; its foot lies at 50, 68, its tip at 53.5, 17.
Path burning() {
    return path_of("M 50 68 C 39 68 32 61 32 51.5 C 32 44 36.5 39 40 33.5 C 40.6 38 42.2 40.8 45 42.5 "
                   "C 44 33 46.5 24 53.5 17 C 53 26 57 30.5 61 36 C 65 41.5 68 45.5 68 52 C 68 61.5 61 68 50 68 Z "
                   "M 50.5 63.6 C 55.8 63.6 59.8 60.2 59.8 54.8 C 59.8 50.6 58 46.6 55 42.6 "
                   "C 55.2 45.4 55 47.6 54.4 49.8 C 51.8 48.4 50.2 46 48.6 42 "
                   "C 46.6 48 42 50.8 42 56 C 42 60.6 45.4 63.6 50.5 63.6 Z");
}

FillPath bar(double y, double half) {
    return filled(rect_path({at(50 - half, y), {units(2 * half), units(3.2)}}));
}

} // namespace

Ink flame() {
    return {filled(burning()), bar(71.6, 17)};
}

Ink flame_over_circle() {
    constexpr double scale = 0.68;
    Path ring = circle_path(at(50, 61.8), units(13.6));
    const Path hole = mirrored(circle_path(at(50, 61.8), units(8.2)), 50);
    ring.insert(ring.end(), hole.begin(), hole.end());
    return {filled(transformed(burning(), {scale, 0, 0, scale, units(49.4 - 50 * scale), units(46.8 - 68 * scale)})),
            filled(std::move(ring)), bar(77.4, 9.5)};
}

} // namespace dyeleaf
