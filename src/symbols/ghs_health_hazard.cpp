#include "symbols/ghs_symbols.h"

namespace dyeleaf::drawing {

Ink health_hazard() {
    return {
        // Head and shoulders, cut off along the frame.
        black(symmetric(outline("M 50 15.6 C 54.8 15.6 57.6 19.2 57.6 23.8 C 57.6 27.6 56.2 30.4 54.2 32 V 36 "
                                "C 54.2 37.4 56 38 58 38.6 C 66 40.8 69.6 43 70.6 49.6 L 73 63.4 L 63.2 73.2 H 50"))),
        // Where the arms lie against the body.
        white(outline("M 35.6 54 H 37.2 L 35.6 74 H 34 Z")),
        white(outline("M 64.4 54 H 62.8 L 64.4 74 H 66 Z")),
        // The burst: eight points, no two alike.
        white(outline("M 49.4 39 L 52.2 49.4 L 58.6 44.6 L 55.8 51.8 L 63 54.4 L 56 56.8 L 59.6 64 L 53 60.2 L 50.4 71 "
                      "L 47.6 60.6 "
                      "L 41 65 L 44.2 57.4 L 37.2 55.2 L 44.2 52.4 L 40.6 45.4 L 47.2 49.2 Z")),
    };
}

} // namespace dyeleaf::drawing
