// The ink of a code: always black on white, whatever lies below; all of the black is one path.
#pragma once

#include "codes/size_code.h"
#include "display/display_list.h"

#include <vector>

namespace dyeleaf {

// The code with its quiet zones at `origin`; captions are words and not drawn here.
std::vector<DisplayItem> draw_code(const Code& code, const CodeSize& size, Length dot, Point origin);

// Where the first module lies in a code at the origin, and where the bars' captions stand below it.
Point first_module(const Code& code, const CodeSize& size, Length dot);

} // namespace dyeleaf
