// How large a code is on paper: its module is a whole number of the printer's dots, so that every bar of two modules
// comes out twice as wide as one of a single module.
#pragma once

#include "base/geometry.h"
#include "codes/code.h"

#include <optional>

namespace dyeleaf {

// What a code may take. Without a width and without a height it gets its usual size.
struct CodeRoom {
    std::optional<Length> width, height;
    bool usual = false;  // no larger than usual, however much room there is
    Length dot;          // of the printer
    Length least_module; // where it is more than what the kind asks for
    Length foot;         // for the text below a Code 128
};

struct CodeSize {
    Length module;
    Length bars; // how tall they are without what reaches down; of a matrix, its height
    Length foot; // from the end of the bars to the end of the caption
    Size whole;  // with quiet zones and one dot of play, within which the code is laid on the dots of the page
};

// The largest module that fits the room; nothing where even the least does not.
std::optional<CodeSize> largest_size(const Code& code, const CodeRoom& room);

// What the code needs at the very least, whatever the room.
CodeSize least_size(const Code& code, const CodeRoom& room);

} // namespace dyeleaf
