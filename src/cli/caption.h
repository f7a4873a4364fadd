// The small print under a sheet's test line, and other single lines.
#pragma once

#include "display/display_list.h"
#include "text/typesetter.h"

#include <string>

namespace dyeleaf {

// One line of text as a list just large enough to hold it.
DisplayList set_caption(const std::string& text, const Typesetter& typesetter, Length size = pt(6.5));

} // namespace dyeleaf
