// How a colour patch is drawn, so that recorded, estimated, unknown and unprintable can be told apart without colour.
#pragma once

#include "base/ink.h"
#include "display/display_list.h"
#include "facts/facts.h"

#include <vector>

namespace dyeleaf {

struct PatchDress {
    Ink ink;
    bool is_bare = true; // no words on it
};

// recorded: the colour, outlined where it is nearly as light as paper, with a light line inside its edge where it is
// nearly black and does not bleed; estimated: the same with its lower right corner cut away; beyond print: either with
// a + in its upper right corner; not recorded: a dashed frame round bare paper; not printable: hatched in the nearest
// tint. In mono a bare patch carries the pattern of its hue; with sparing ink, patches are outlines with that pattern,
// the heavier the darker. There, not printable is a crossed frame. `inked` is `rect`, grown where the patch bleeds off
// the label; what marks a patch lies inside `rect`.
std::vector<DisplayItem> draw_patch(const Patch& patch, PatchDress dress, Rect rect, Rect inked, Length corner);

// What lies on it and must not be written over: its mark, its cut corner.
std::vector<Rect> marks_on(const Patch& patch, Rect rect);

// What the words on it stand on: its colour, or paper.
Rgb ground_of(const Patch& patch, Ink ink);

} // namespace dyeleaf
