#include "symbols/ghs_symbols.h"

namespace dyeleaf::drawing {

Ink health_hazard() {
    return {
        black(symmetric(
            outline("M 50 16.5 C 55.8 16.5 59.6 21 59.6 27 C 59.6 31.6 57.8 35.4 55.2 37.6 L 55.2 40.2 "
                    "C 55.4 42.8 59.6 43.6 64 45 C 70.6 47 73.6 50.4 73.6 57 L 73.6 65.8 L 65.2 74.2 L 50 74.2"))),
        // The burst: eight points, no two alike.
        white(outline(
            "M 53 43.5 L 52.8 52.8 L 60.6 49.6 L 55.2 56 L 66.5 60.2 L 54.6 61.4 L 57 69.4 L 51.2 64.2 L 47.2 72.6 "
            "L 47.4 63.6 L 39.4 66.6 L 45 60.2 L 34 56 L 45.6 55.2 L 42.6 47.6 L 48.8 52.4 Z")),
    };
}

} // namespace dyeleaf::drawing
