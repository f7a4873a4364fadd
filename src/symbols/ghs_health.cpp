#include "symbols/ghs.h"

namespace dyeleaf {

// Head, shoulders and arms of a person, and a burst in the chest.
Ink health_hazard() {
    return {
        filled(path_of("M 50 15.6 C 54.8 15.6 57.6 19.2 57.6 23.8 C 57.6 27.6 56.2 30.4 54.2 32 V 36 "
                       "C 54.2 37.4 56 38 58 38.6 C 66 40.8 69.6 43 70.6 49.6 L 73 63.4 L 66 70.4 L 63.2 73.2 H 36.8 "
                       "L 34 70.4 L 27 63.4 L 29.4 49.6 C 30.4 43 34 40.8 42 38.6 C 44 38 45.8 37.4 45.8 36 V 32 "
                       "C 43.8 30.4 42.4 27.6 42.4 23.8 C 42.4 19.2 45.2 15.6 50 15.6 Z")),
        StrokePath{path_of("M 36.4 54 L 34.8 75 M 63.6 54 L 65.2 75"), white, units(1.6), {}},
        filled(path_of("M 49.4 39 L 52.2 49.4 L 58.6 44.6 L 55.8 51.8 L 63 54.4 L 56 56.8 L 59.6 64 L 53 60.2 "
                       "L 50.4 71 L 47.6 60.6 L 41 65 L 44.2 57.4 L 37.2 55.2 L 44.2 52.4 L 40.6 45.4 L 47.2 49.2 Z"),
               white)};
}

} // namespace dyeleaf
