#include "symbols/ghs_symbols.h"

namespace dyeleaf::drawing {

Ink exclamation_mark() {
    return {
        black(outline("M 50 17.5 C 55 17.5 58.2 21.2 57.8 26.5 L 54.9 57 C 54.6 60.2 52.7 62.4 50 62.4 "
                      "C 47.3 62.4 45.4 60.2 45.1 57 L 42.2 26.5 C 41.8 21.2 45 17.5 50 17.5 Z")),
        black(circle_path({mm(5), mm(7.3)}, mm(0.65))),
    };
}

} // namespace dyeleaf::drawing
