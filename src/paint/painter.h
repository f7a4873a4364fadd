// Draws display lists with Cairo: the only room that includes its headers; here and in pdf alone millimetres become
// points or pixels. Every Cairo status is checked; a failing one is thrown as PaintError.
#pragma once

#include "display/display_list.h"

#include <stdexcept>
#include <string>

namespace dyeleaf {

class PaintError : public std::runtime_error {
  public:
    using std::runtime_error::runtime_error;
};

// Requires a page that viewers can show, else throws: PDF viewers take none longer than 200 inches (ISO 32000-1, annex
// C).
void check_size(Size page);

// One page as PNG on white, `dpi` dots to the inch, and as SVG with glyphs as outlines; both return the file's bytes.
std::string paint_png(const DisplayList& list, double dpi);
std::string paint_svg(const DisplayList& list);

} // namespace dyeleaf
