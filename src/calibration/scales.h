// The ruled parts of the measuring sheet.
#pragma once

#include "display/display_list.h"
#include "text/writing.h"

#include <string>

namespace dyeleaf {

enum class Way { across, down };

// From 0 to 20 mm about `middle`, ruled to half a millimetre; figures grow to the right, or down.
void draw_scale(DisplayList& sheet, Writing& writing, Point middle, Way way);
// A line for the ruler about `middle`, with a tick at each end to measure from and centimetres between.
void draw_ruler_line(DisplayList& sheet, Point middle, Length length);
// A small picture of a sheet of this shape that is folded edge on edge, with the crease that comes of it.
void draw_fold(DisplayList& sheet, Rect paper, Way way);
void draw_ring(DisplayList& sheet, Point middle, Length radius);
void draw_cross(DisplayList& sheet, Point middle, Length reach);

} // namespace dyeleaf
