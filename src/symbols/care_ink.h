// The pen that all care symbols are drawn with, and the lines they stand on.
#pragma once

#include "display/display_list.h"

namespace dyeleaf::care {

// Millimetres from the top left corner of the symbol.
constexpr Point at(double x, double y) {
    return {mm(x), mm(y)};
}

inline constexpr Length pen_width = mm(0.55);
inline constexpr Length lettering_width = mm(0.5); // numerals and letters, whose counters are small
// The middle of the uppermost and lowest stroke of tub, triangle, square and circle. What lies below is kept for bars,
// so that a row of symbols stands on one line.
inline constexpr Length body_top = mm(0.9);
inline constexpr Length baseline = mm(7.5);

// A list `width` wide and as high as every symbol.
DisplayList blank(Length width);

// A line with round ends and corners. Strokes have neither: at every corner a stroke ends and the next begins, and a
// disc lies on the joint.
void stroke(DisplayList& list, const Path& path, Length width = pen_width);
void dot(DisplayList& list, Point centre);

// Below the body: one for a mild process, two for a very mild one.
enum class Mildness { normal, mild, very_mild };
void bars(DisplayList& list, Mildness mildness);

// The St Andrew's cross of "do not" reaches beyond the body above and below, and is as wide as high, so that the
// corners of wide bodies stay in sight. Requires: a list no narrower than the cross.
inline constexpr Length cross_width = body_top + baseline;
void cross_out(DisplayList& list);

} // namespace dyeleaf::care
