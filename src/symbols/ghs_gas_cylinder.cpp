#include "symbols/ghs_symbols.h"

namespace dyeleaf::drawing {

Ink gas_cylinder() {
    // Lying flat, valve to the right, then turned upwards.
    const Transform aslant = turned_by(-20, {mm(-0.02), mm(0.03)});
    return {
        black(transformed(
            outline("M 26 40.2 L 60 40.2 C 66.5 40.2 69.5 43.8 71 47 L 73.6 47 L 73.6 44.8 L 79.2 44.8 L 79.2 55.2 "
                    "L 73.6 55.2 L 73.6 53 L 71 53 C 69.5 56.2 66.5 59.8 60 59.8 L 26 59.8 "
                    "C 22.8 59.8 21 57.8 21 54.5 L 21 45.5 C 21 42.2 22.8 40.2 26 40.2 Z"),
            aslant)),
        white(transformed(outline("M 26.5 44 L 60 44 C 62.5 44 64.3 44.9 65.6 46.6 L 26.5 46.6 Z"), aslant)),
    };
}

} // namespace dyeleaf::drawing
