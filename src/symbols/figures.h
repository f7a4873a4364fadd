// Digits and letters as strokes of the symbols' own weight, so that a symbol needs no font.
#pragma once

#include "display/display_list.h"

#include <string_view>

namespace dyeleaf::drawing {

// The digits of a washing temperature, or P, F or W, centred on a point. Requires: figures that are drawn here; any
// other throws std::logic_error.
Path figures_path(std::string_view figures, Point centre);

} // namespace dyeleaf::drawing
