#include "symbols/ghs.h"

namespace dyeleaf {

namespace {

// Level, centred on 50, 63.
Path bone() {
    return path_of("M 35 61.2 H 65 C 64.6 57 70.4 56.4 70.4 60 C 70.4 61.6 69.4 62.6 68.4 63 "
                   "C 69.4 63.4 70.4 64.4 70.4 66 C 70.4 69.6 64.6 69 65 64.8 "
                   "H 35 C 35.4 69 29.6 69.6 29.6 66 C 29.6 64.4 30.6 63.4 31.6 63 "
                   "C 30.6 62.6 29.6 61.6 29.6 60 C 29.6 56.4 35.4 57 35 61.2 Z");
}

Path skull() {
    return path_of("M 50 18 C 59.5 18 65.5 24.5 65.5 33 C 65.5 37.5 64 41 61.5 43.5 C 60 45 59.5 46 59.5 48 V 51 "
                   "C 59.5 53 58.5 54 56.5 54 H 43.5 C 41.5 54 40.5 53 40.5 51 V 48 C 40.5 46 40 45 38.5 43.5 "
                   "C 36 41 34.5 37.5 34.5 33 C 34.5 24.5 40.5 18 50 18 Z");
}

} // namespace

Ink skull_and_crossbones() {
    const Path eye = path_of("M 42.8 31 C 46 31 47.4 33.4 47 36.4 C 46.6 39.4 44.6 40.8 42 40.4 "
                             "C 39.2 40 37.8 38 38 35.6 C 38.2 32.8 40 31 42.8 31 Z");
    const Point middle = at(50, 63);
    return {filled(transformed(bone(), turned_about(middle, 20))),
            filled(transformed(bone(), turned_about(middle, -20))),
            filled(skull()),
            filled(eye, white),
            filled(mirrored(eye, 50), white),
            filled(path_of("M 50 40.4 C 51.4 41.8 52.6 43.8 52.8 45.4 C 51.6 46.2 50.8 45.6 50 45 "
                           "C 49.2 45.6 48.4 46.2 47.2 45.4 C 47.4 43.8 48.6 41.8 50 40.4 Z"),
                   white),
            StrokePath{path_of("M 46.7 49 V 55 M 50 49 V 55 M 53.3 49 V 55"), white, units(1.1), {}}};
}

} // namespace dyeleaf
