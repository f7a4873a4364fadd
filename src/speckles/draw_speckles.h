// A dye drawn as it speckles undyed yarn, in true size.
#pragma once

#include "base/ink.h"
#include "display/display_list.h"
#include "facts/speckled.h"

#include <vector>

namespace dyeleaf {

// What `rect` shows of the yarn, out to `inked` where that bleeds; the middle of the yarn's tile lies in its middle.
// Solid colours only, thinned towards the ground, so that every renderer and press shows the same; each colour is
// one path. A ground that is not recorded is bare paper in a frame. A dye whose colour is not recorded is outlined and
// one that no ink shows is hatched. With sparing ink all is outlines; in mono specks nearly as light as their ground
// have one.
std::vector<DisplayItem> draw_speckles(const Speckled& speckled, Ink ink, Rect rect, Rect inked, Length corner);

} // namespace dyeleaf
