// The pixels of PNG files (PNG specification, third edition). The only room that includes libpng.
#pragma once

#include "pictures/stated_colours.h"

#include <functional>
#include <optional>
#include <span>
#include <string_view>

namespace dyeleaf {

// Some pixels of a stored row: those in column `first` and every `apart`-th after it (of a file that is not interlaced,
// all of them), six bytes each: red, green and blue, the high byte first. Transparency is left out.
struct PngRow {
    int y = 0, first = 0, apart = 1;
    std::span<const unsigned char> bytes;
};

// Calls `row` with those of the first `rows` rows, and perhaps with more. False where the file is broken.
bool unpack_png(std::string_view bytes, const std::function<void(const PngRow&)>& row, int rows);

// Nothing where the file is broken; of a broken profile, no bytes. Colours are stated by the first of these chunks that
// is there: iCCP, sRGB, gAMA (with cHRM, else by the lights of sRGB), as PNG's chapter 4.3 orders them.
std::optional<Coding> coding_of_png(std::string_view bytes);

} // namespace dyeleaf
