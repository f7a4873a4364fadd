#include "symbols/ghs_symbols.h"

namespace dyeleaf::drawing {

namespace {

// What pours to the right; the same pours to the left.
std::vector<FillPath> tube_and_drop() {
    const Transform aslant = turned_by(44, {mm(1.3), mm(-1.85)});
    return {
        // Drawn flat: glass with a lip, the room inside, and the liquid, whose surface is level after the turn.
        black(transformed(
            outline("M 43 44.8 L 59.4 44.8 L 59.4 43.6 L 62 43.6 L 62 56.4 L 59.4 56.4 L 59.4 55.2 L 43 55.2 "
                    "C 40 55.2 37.8 53 37.8 50 C 37.8 47 40 44.8 43 44.8 Z"),
            aslant)),
        white(transformed(outline("M 43 46.8 L 59.6 46.8 L 59.6 53.2 L 43 53.2 C 41.2 53.2 39.8 51.8 39.8 50 "
                                  "C 39.8 48.2 41.2 46.8 43 46.8 Z"),
                          aslant)),
        black(transformed(outline("M 48 53.4 L 55 46.6 L 60 46.6 L 60 53.4 Z"), aslant)),
        black(outline("M 66.6 45.6 C 67.8 47.8 68.9 49.2 68.9 50.8 C 68.9 52.2 67.9 53.1 66.6 53.1 "
                      "C 65.3 53.1 64.3 52.2 64.3 50.8 C 64.3 49.2 65.4 47.8 66.6 45.6 Z")),
    };
}

// Seen from above, drawn flat: four fingers to the left, the thumb below, the arm to the right.
Path hand() {
    return transformed(outline("M 76.4 47 L 63.6 46 C 62.4 50.4 57.4 50.6 55.8 47 C 55.3 45.9 55.1 44.8 55.3 43.6 "
                               "L 41.5 43.2 C 39.5 43.2 39.5 46.4 41.5 46.4 L 48.5 46.6 L 48.5 47.4 "
                               "L 37.6 47.2 C 35.5 47.2 35.5 50.4 37.6 50.4 L 48.5 50.5 L 48.5 51.3 "
                               "L 38.6 51.4 C 36.6 51.4 36.6 54.5 38.6 54.5 L 48.5 54.4 L 48.5 55.2 "
                               "L 42.2 55.5 C 40.4 55.5 40.4 58.3 42.2 58.3 L 49.4 58.3 "
                               "C 48.4 59.2 47 60 45.2 60.8 C 43.3 61.8 44.6 64.4 46.6 63.8 C 51 62.4 53.6 60 56.6 58 "
                               "C 59 56.3 61 55.5 63.4 54.6 L 74.2 50.7 Z"),
                       turned_by(-22, {mm(1.02), mm(1.47)}));
}

} // namespace

Ink corrosion() {
    Ink ink;
    for (const FillPath& part : tube_and_drop()) {
        ink.emplace_back(part);
        ink.emplace_back(FillPath{mirrored(part.path), part.colour});
    }
    // The surface, eaten into; its end runs along the frame.
    ink.emplace_back(black(outline("M 20.4 61 L 26.8 61 C 27.6 64 29.4 63.6 31 65.2 C 33.4 67.2 37 65 38.2 61 "
                                   "L 44 61 L 44 70.6 L 30 70.6 Z")));
    ink.emplace_back(black(hand()));
    return ink;
}

} // namespace dyeleaf::drawing
