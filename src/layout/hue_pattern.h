// Patterns that tell hues apart where there is no colour to do it.
#pragma once

#include "display/display_list.h"

namespace dyeleaf {

// The pattern of this colour's hue in lines of `ink`, from the top left corner of `size`. The hatching of heraldry
// (S. Petra Sancta, Tesserae gentilitiae, 1638; from memory): red upright lines, blue level ones, green falling to the
// right, violet rising, yellow dots, black crossed ones. Hues between two of these carry both: pink is violet and red,
// orange and brown are red and yellow, turquoise is green and blue. Greys from the middle up are plain.
DisplayList hue_pattern(Rgb colour, Size size, Rgb ink, Length line);

} // namespace dyeleaf
