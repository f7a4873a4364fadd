// Codes to scan in their boxes: how large they want to be, and their ink with the words below them.
#pragma once

#include "layout/box.h"
#include "layout/place.h"
#include "layout/set_words.h"

#include <optional>
#include <string>
#include <vector>

namespace dyeleaf {

// Without the box's frame, in `available` width.
Size wanted_code(const CodeMark& mark, const Box& box, Length available, const Trial& trial);

struct PlacedCode {
    std::vector<DisplayItem> items;
    Rect rect; // with its quiet zones, in the middle of its room or at its edge, as the box's text is aligned
    std::string text;
    std::optional<Misfit> misfit; // then nothing is drawn
};
PlacedCode draw_code_mark(const CodeMark& mark, const Box& box, Rect rect, const Trial& trial);

} // namespace dyeleaf
