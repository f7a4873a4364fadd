// The pen of every drawing. One unit of an outline is a tenth of a millimetre: drawings are 100 units high.
#pragma once

#include "display/transform_path.h"
#include "symbols/named_drawing.h"

#include <string_view>
#include <vector>

namespace dyeleaf::drawing {

using Ink = std::vector<DisplayItem>;

constexpr Length units(double value) {
    return mm(value * 0.1);
}
constexpr Point at(double x, double y) {
    return {units(x), units(y)};
}

// Path data as SVG writes them (SVG 1.1, 8.3), of which absolute M, L, H, V, C and Z are known, each with its letter;
// numbers stand between spaces. Throws std::logic_error on anything else: an outline is part of the program.
Path outline(std::string_view data);

// The same seen in a mirror that stands upright at 50.
Path mirrored(const Path& path);
// One closed shape from its right half, an open path that starts and ends at 50.
Path symmetric(const Path& right_half);
// Turned clockwise about 50, 50, then moved.
Transform turned_by(double degrees, Point and_moved);

FillPath black(Path path);
FillPath white(Path path);
// A black line with round ends and corners.
StrokePath stroked(Path path, Length width);

void append(Ink& ink, Ink more);

} // namespace dyeleaf::drawing
