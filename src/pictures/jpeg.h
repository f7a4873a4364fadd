// JPEG files (ISO/IEC 10918-1), baseline and progressive. The only room that includes libjpeg and libexif.
#pragma once

#include "pictures/read_picture.h"
#include "pictures/stated_colours.h"

#include <functional>
#include <limits>
#include <optional>
#include <span>
#include <string>
#include <string_view>

namespace dyeleaf {

bool is_jpeg(std::string_view bytes);

// Requires: is_jpeg. The picture is unpacked once, to see whether it is whole: what is passed on packed would be found
// broken only by a printer.
PictureOrFault read_jpeg(std::string_view bytes);

// Calls `row` with each stored row from the top, or with so many of them, three bytes a pixel: red, green, blue. False
// where it is broken.
bool unpack_jpeg(std::string_view bytes, const std::function<void(std::span<const unsigned char>)>& row,
                 int rows = std::numeric_limits<int>::max());

// Nothing where it is broken. Colours are stated by an ICC profile, else by Exif.
std::optional<Coding> coding_of_jpeg(std::string_view bytes);

// The ICC profile inside, or nothing.
std::string jpeg_profile(std::string_view bytes);

} // namespace dyeleaf
