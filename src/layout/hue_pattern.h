// Patterns that tell hues apart where there is no colour to do it.
#pragma once

#include "display/display_list.h"
#include "facts/hue.h"

namespace dyeleaf {

// The pattern of a family of hues, from the top left corner of `size`; nothing for greys. The hatching of heraldry
// (S. Petra Sancta, Tesserae gentilitiae, 1638; from memory): red upright lines, blue level ones, green falling to the
// right, violet rising, yellow dots. Hues between two of these carry both: pink is violet and red, orange and brown are
// red and yellow, turquoise is green and blue.
DisplayList hue_pattern(HueFamily family, Size size, Rgb colour, Length line);

} // namespace dyeleaf
