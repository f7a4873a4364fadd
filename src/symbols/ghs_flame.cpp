#include "symbols/ghs_symbols.h"

namespace dyeleaf::drawing {

namespace {

// Three tongues on a foot that ends at a height of 66.
Path tongues() {
    return outline("M 42 66 C 33.5 63.5 29.5 56 31.5 48 C 32.8 42.5 37 38.5 35.2 30 C 40.2 33 42.6 37.5 42.2 42.5 "
                   "C 47.5 37.5 45.5 33.5 46.8 27.5 C 47.8 22.8 51 19.5 50 14.5 C 57.8 20 60.8 29 58.8 38 "
                   "C 61.8 36.8 63.2 34.5 63 31 C 68.6 37 71 44.5 69.2 52 C 67.6 58.8 63.5 64 57 66 Z");
}

// The bright middle.
Path heart() {
    return outline(
        "M 47 67 L 47 66 C 42.8 63.8 41.2 59.6 43 55.4 C 44.8 51.6 48.6 49.6 48 44 C 52.2 46.6 53.8 50 53.4 54 "
        "C 55.2 53.4 56.2 52 56.2 50 C 59 54.4 59.4 58.6 57.4 62 C 56.4 63.8 55 65.2 53 66 L 53 67 Z");
}

} // namespace

Ink flame() {
    return {
        black(tongues()),
        white(heart()),
        black(outline("M 33.5 69.2 L 66.5 69.2 L 66.5 73.2 L 33.5 73.2 Z")),
    };
}

Ink flame_over_circle() {
    // The same flame, lower, standing behind a ring.
    const Transform lower{0.96, 0, 0, 0.84, mm(0.18), mm(0.3)};
    const Point middle{mm(5), mm(5.55)};
    return {
        black(transformed(tongues(), lower)),
        white(circle_path(middle, mm(1.47))),
        black(circle_path(middle, mm(1.32))),
        white(circle_path(middle, mm(0.85))),
        black(outline("M 37 71.8 L 63 71.8 L 63 75.6 L 37 75.6 Z")),
    };
}

} // namespace dyeleaf::drawing
