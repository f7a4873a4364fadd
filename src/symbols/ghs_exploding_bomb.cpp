#include "symbols/ghs_symbols.h"

namespace dyeleaf::drawing {

Ink exploding_bomb() {
    return {
        black(circle_path({mm(4.5), mm(6.2)}, mm(1.58))),
        // Where the shell has burst.
        white(outline("M 40 43 L 46.5 51.5 L 43.5 57 L 50 56.5 L 49.5 65 L 54.5 61 L 66 66 L 66 44 Z")),
        // The blast.
        black(outline(
            "M 50 49.5 L 36.5 29.5 L 51 42.5 L 49 14.5 L 56.5 41 L 66.3 26.6 L 61.5 43.5 L 80 41.5 L 63 49.5 L 77 61 "
            "L 60 55 L 56.5 57 L 55 52.5 L 51 53.5 Z")),
        // Splinters.
        black(outline("M 38.5 37 L 42.6 40.4 L 39.2 43.4 L 34 41 Z")),
        black(outline("M 41.2 24.6 L 45.2 23 L 46 30.4 L 42.4 29.4 Z")),
        black(outline("M 57.4 23.6 L 60.8 20.8 L 60 29 L 56.8 31 Z")),
        black(outline("M 69.4 32 L 74.2 33.2 L 71.6 38 L 67.4 37.4 Z")),
        black(outline("M 72.6 50 L 79.6 48.8 L 77.6 54 Z")),
        black(outline("M 63.6 59.6 L 69 61.4 L 69 67 L 63.6 64.4 Z")),
    };
}

} // namespace dyeleaf::drawing
