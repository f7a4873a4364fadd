// Our own numerals and letters for care symbols, of lines and curves.
#pragma once

#include "display/display_list.h"

#include <string_view>

namespace dyeleaf::care {

// The middle of the pen's way for digits 0, 3 to 7 and 9, and the letters P, F and W; the text stands in the middle of
// `centre`, `height` high from pen middle to pen middle. Other characters leave nothing.
Path lettering(std::string_view text, Point centre, Length height);

} // namespace dyeleaf::care
