// The pen of every drawing: paths written as short texts on a sheet of 100 units to the height, strokes of one weight.
#pragma once

#include "display/display_list.h"

#include <string_view>
#include <vector>

namespace dyeleaf {

using Ink = std::vector<DisplayItem>;

inline constexpr Rgb black{0, 0, 0};
inline constexpr Rgb white{1, 1, 1};

// Drawings are 10 mm high and scaled where they are placed.
constexpr Length units(double value) {
    return mm(value * 0.1);
}
constexpr Point at(double x, double y) {
    return {units(x), units(y)};
}

// A path in units, written as in SVG's path data with capital letters alone: M and L with a point, H and V with one
// coordinate, C with three points, Z. A letter stands before every step: "M 0 0 H 10 C 10 5 5 10 0 10 Z". Requires:
// well-formed; anything else throws std::logic_error, and a test draws every symbol.
Path path_of(std::string_view data);

Path transformed(const Path& path, const Transform& transform);
// Mirrored left to right about the vertical at x.
Path mirrored(const Path& path, double x);
// Turned clockwise about a point.
Transform turned_about(Point centre, double degrees);

StrokePath stroked(Path path, Length width, Rgb colour = black); // with round ends and corners
FillPath filled(Path path, Rgb colour = black); // the inside of a path that runs the other way stays bare
FillPath dot(Point centre, Length radius, Rgb colour = black);

void append(Ink& ink, Ink more);

} // namespace dyeleaf
