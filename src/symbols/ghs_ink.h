// How the hazard pictograms are put together: outlines written as path data, filled black or white. One unit of an
// outline is a tenth of a millimetre, so that a pictogram is 100 units high and its middle is at 50, 50.
#pragma once

#include "symbols/named_drawing.h"

#include <string_view>
#include <vector>

namespace dyeleaf::ghs {

using Ink = std::vector<DisplayItem>;

// Path data as SVG writes them (SVG 1.1, 8.3), of which absolute M, L, C and Z are known, each with its letter;
// numbers stand between spaces. Throws std::logic_error on anything else: an outline is part of the program.
Path outline(std::string_view data);

// The same seen in a mirror that stands upright in the pictogram's middle.
Path mirrored(const Path& path);
// One closed shape from its right half, an open path that starts and ends in the pictogram's middle.
Path symmetric(const Path& right_half);
Path transformed(const Path& path, const Transform& transform);
// Turned clockwise about the pictogram's middle, then moved.
Transform turned_by(double degrees, Point and_moved);

FillPath black(Path path);
FillPath white(Path path);

// The square standing on its point: frame and white ground.
Ink frame(bool mono);

} // namespace dyeleaf::ghs
