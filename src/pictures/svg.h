// SVG drawings (W3C, SVG 1.1 second edition), as far as what may be placed. The only room that includes libxml2.
#pragma once

#include "pictures/read_picture.h"

#include <string_view>

namespace dyeleaf {

// Whether it is XML text that speaks of an svg element near its beginning.
bool is_svg(std::string_view bytes);

// Requires: is_svg. Refused is what would print otherwise here than where it was drawn: words (whose font is not ours),
// pictures inside, filters, and whatever lies outside the file.
PictureOrFault read_svg(std::string_view bytes);

} // namespace dyeleaf
