#include "symbols/ghs.h"

namespace dyeleaf {

Ink exclamation_mark() {
    return {filled(path_of("M 50 21 C 54.6 21 57.4 24.2 57.4 28.6 C 57.4 35 54.6 46 53.4 55 "
                           "C 53.1 57.4 51.9 58.8 50 58.8 C 48.1 58.8 46.9 57.4 46.6 55 "
                           "C 45.4 46 42.6 35 42.6 28.6 C 42.6 24.2 45.4 21 50 21 Z")),
            dot(at(50, 69.5), units(6.2))};
}

} // namespace dyeleaf
