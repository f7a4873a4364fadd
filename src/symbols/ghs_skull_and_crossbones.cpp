#include "symbols/ghs_symbols.h"

namespace dyeleaf::drawing {

namespace {

// From upper left to lower right: drawn flat, two knobs at either end.
Path bone() {
    return transformed(outline("M 24.5 47.6 C 22.5 47.6 21.2 46.2 21.2 44.4 C 21.2 42.6 22.6 41.2 24.4 41.2 "
                               "C 26.4 41.2 27.7 42.6 28 44.4 C 28.4 46.6 29.4 47.6 31.2 47.6 "
                               "L 61.8 47.6 C 63.6 47.6 64.6 46.6 65 44.4 C 65.3 42.6 66.6 41.2 68.6 41.2 "
                               "C 70.4 41.2 71.8 42.6 71.8 44.4 C 71.8 46.5 70.8 47.8 69.3 50 "
                               "C 70.8 52.2 71.8 53.5 71.8 55.6 C 71.8 57.4 70.4 58.8 68.6 58.8 "
                               "C 66.6 58.8 65.3 57.4 65 55.6 C 64.6 53.4 63.6 52.4 61.8 52.4 L 31.2 52.4 "
                               "C 29.4 52.4 28.4 53.4 28 55.6 C 27.7 57.4 26.4 58.8 24.4 58.8 "
                               "C 22.6 58.8 21.2 57.4 21.2 55.6 C 21.2 53.5 22.2 52.2 23.7 50 Z"),
                       turned_by(22, {mm(-0.1), mm(0.75)}));
}

} // namespace

Ink skull_and_crossbones() {
    const Path skull = symmetric(outline("M 50 18 C 60 18 66.6 24.6 66.6 33.8 C 66.6 38.2 65.4 41.2 63.6 43.8 "
                                         "C 62.3 45.7 60.2 46.2 59.3 47.6 C 58.8 48.5 59 50.4 59 52.5 "
                                         "C 59 55.8 57.4 57.6 54.5 57.6 L 50 57.6"));
    const Path socket = outline("M 53.2 41 C 52.4 36.8 54.5 33 58.5 33 C 61.8 33 63.8 35.4 63.4 38.6 "
                                "C 63 42 60.6 43.8 57.6 43.6 C 55.2 43.4 53.6 42.8 53.2 41 Z");
    return {
        black(bone()),
        black(mirrored(bone())),
        StrokePath{skull, {1, 1, 1}, mm(0.24), {}},
        black(skull),
        white(socket),
        white(mirrored(socket)),
        white(symmetric(outline("M 50 42.5 C 51.4 44 52.6 46 52.6 47.6 C 52.6 49 50.8 49 50 48"))),
        white(outline("M 49.4 52.5 L 50.6 52.5 L 50.6 58.5 L 49.4 58.5 Z")),
        white(outline("M 45.4 52.5 L 46.6 52.5 L 46.6 58.5 L 45.4 58.5 Z")),
        white(outline("M 53.4 52.5 L 54.6 52.5 L 54.6 58.5 L 53.4 58.5 Z")),
    };
}

} // namespace dyeleaf::drawing
