// Characters that do something instead of being seen.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

namespace dyeleaf {

struct Control {
    std::size_t at = 0;
    std::size_t bytes = 0;
    bool turns_text = false; // makes what follows run the other way
};

// The first one in UTF-8 text that is not a tab or a line end: C0 and C1 controls, a byte order mark, and the marks
// that override the direction of text (Unicode Standard Annex 9, 2.1 to 2.6), by which a name can look like another.
std::optional<Control> find_control(std::string_view text);

// Text for a terminal, where it stays one line and columns stay true: each of them, each line end and each byte that is
// not UTF-8 as a dot, a tab as a space.
std::string with_controls_shown(std::string_view text);

} // namespace dyeleaf
