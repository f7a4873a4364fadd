#include "symbols/ghs.h"

namespace dyeleaf {

namespace {

// A test tube that pours to the left, and the drops that fall from it.
Ink pouring() {
    const Path tube = path_of("M 30 31.6 H 47.4 C 51.6 31.6 51.6 38.4 47.4 38.4 H 30 V 39.6 H 27.4 V 30.4 H 30 Z "
                              "M 32 36.6 H 40 V 33.4 H 32 Z");
    const Path drop = path_of("M 29 42.4 C 30.6 45.6 31.4 46.8 31.4 48.2 C 31.4 51.4 26.6 51.4 26.6 48.2 "
                              "C 26.6 46.8 27.4 45.6 29 42.4 Z");
    return {filled(transformed(tube, turned_about(at(29, 35), -35))), filled(drop)};
}

} // namespace

Ink corrosion() {
    Ink ink = pouring();
    for (const DisplayItem& item : pouring()) {
        ink.emplace_back(filled(mirrored(std::get<FillPath>(item).path, 50)));
    }
    // A slab, eaten away below the drop.
    ink.emplace_back(filled(path_of("M 21 54.6 H 25 L 25.8 57.2 L 27.2 57 L 28.2 59.4 L 30 58.4 L 31.2 59.6 "
                                    "L 32.2 56.8 L 33.6 57 L 34.4 54.6 H 47 V 63 H 26 C 23 63 21 61.4 21 58.4 Z")));
    // A hand from the right, likewise.
    ink.emplace_back(filled(path_of("M 79 54 H 75 L 74.2 56.6 L 72.8 56.4 L 71.8 58.8 L 70 57.8 L 68.8 59 L 67.8 56.2 "
                                    "L 66.4 56.4 L 65.6 54.2 C 62 54.2 58 53.4 55.2 53.2 C 52.6 53 52.4 56.2 54.8 56.6 "
                                    "L 60.6 57.6 L 56.6 58.4 C 54.4 59 54.8 62 57 61.8 L 62 61.2 "
                                    "C 65 63.4 68 64 71 64 L 74.6 63.6 C 77.4 63.2 79 61.4 79 58.6 Z")));
    const Transform lower = Transform::move(at(0, 2)); // into the middle of the square
    for (DisplayItem& item : ink) {
        Path& path = std::get<FillPath>(item).path;
        path = transformed(path, lower);
    }
    return ink;
}

} // namespace dyeleaf
