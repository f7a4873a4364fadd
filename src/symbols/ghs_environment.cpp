#include "symbols/ghs.h"

namespace dyeleaf {

namespace {

// Bare, its trunk standing on the bank.
Ink tree() {
    return {
        filled(path_of("M 33.4 60 C 36.4 57.4 37 52 37 45 L 41.4 45 C 41.4 52 42 57.4 45 60 Z")),
        stroked(path_of("M 39.2 47 C 39.2 42 36.6 38 32.6 33.4 M 39.2 47 C 39.2 41 40 36 41.6 28 "
                        "M 39.6 48 C 41 43.4 44.6 39.6 49.2 36"),
                units(2.6)),
        stroked(path_of("M 36.4 38.4 L 36.6 29.6 M 35 36.2 L 27.6 35.4 M 40.4 35.4 L 37.8 30.4 M 40.8 32.6 L 45.4 25.4 "
                        "M 44.6 40 L 45.4 32.4 M 46.6 38.2 L 53.4 38.6 M 38.6 52 C 36 48.6 33 46.6 28.4 45.4 "
                        "M 33.6 47.4 L 32 42.8 M 40.4 51 C 43 47.6 47 46.2 52 46 M 45.6 47.4 L 49.6 42.8"),
                units(1.7))};
}

} // namespace

// A dead tree on the bank and a dead fish, belly up, on the water.
Ink environment() {
    Ink ink = tree();
    append(ink, {filled(path_of(
                     "M 21.6 60 C 27 58.4 34 58.6 41 58.8 C 45.6 58.8 49.4 59.8 48.6 62 C 47.6 64.8 43 64.6 41.6 67 "
                     "C 40.4 69.4 35.4 70 31.4 69.6 Z")),
                 filled(path_of("M 50.6 62 C 53.6 57 57.4 55.4 60.6 55.4 C 64.4 55.4 67 57.6 68.8 60.2 L 74.2 56.8 "
                                "C 73.4 59.6 73.2 62.2 73.8 65.4 L 68.6 63 C 66.8 65.6 63.8 67.2 60.2 67.2 "
                                "C 56.8 67.2 53.2 65.6 50.6 62 Z M 58.4 55.8 L 62 51.6 L 64.2 56.8 Z")),
                 dot(at(55.8, 62.8), units(1.4), white),
                 stroked(path_of("M 40 73.4 C 42.6 73.4 43.4 71.4 46 71.4 C 48.6 71.4 49.4 73.4 52 73.4 "
                                 "C 54.6 73.4 55.4 71.4 58 71.4 C 60.6 71.4 61.4 73.4 64 73.4"),
                         units(1.8))});
    return ink;
}

} // namespace dyeleaf
