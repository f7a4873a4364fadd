// Pango's lines become glyph runs in ems.
#pragma once

#include "text/typesetter.h"

#include <pango/pango.h>

#include <string>
#include <vector>

namespace dyeleaf {

// The line of a layout that was set with `units` Pango units to the em.
TextLine glyph_line(PangoLayoutLine* line, double units);

// The characters for which the layout has no glyph, each once.
std::vector<std::string> missing_characters(PangoLayout* layout);

} // namespace dyeleaf
