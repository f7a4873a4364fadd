// What care symbols share: one sheet, one stroke weight, bars below, the cross. Every figure (tub, triangle, square,
// iron, circle) stands between the same two lines; below it is room for two bars, bare where there are none, so that
// symbols in a row stand on one line. These are our own drawings after the geometry that ISO 3758 gives in words; the
// standard's symbols are protected marks in some countries.
#pragma once

#include "symbols/pen.h"

namespace dyeleaf::drawing {

inline constexpr Length care_weight = units(5);
// The lines on which the strokes of a figure run at its top and foot; the ink reaches half a stroke further.
inline constexpr double figure_top = 6.5;
inline constexpr double figure_foot = 77.5;

// `width` of the sheet in units; its height is 100.
DisplayList care_sheet(double width, Ink ink);

StrokePath care_line(std::string_view path);
StrokePath care_line(Path path);

// Bars below a figure that is centred on x: one for a mild process, two for a very mild one.
Ink bars(int count, double x, double width);
// The St Andrew's cross from corner to corner of a sheet of `width`, a little beyond the figure.
Ink cross(double width);
// Dots side by side, centred on a point.
Ink dots(int count, Point centre);

} // namespace dyeleaf::drawing
