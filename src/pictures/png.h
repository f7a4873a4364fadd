// PNG files, as far as their header and their end.
#pragma once

#include "pictures/read_picture.h"

#include <string_view>

namespace dyeleaf {

bool is_png(std::string_view bytes);
// Requires: is_png; so with what follows.
bool has_png_chunk(std::string_view bytes, std::string_view name);
PictureOrFault read_png(std::string_view bytes);

} // namespace dyeleaf
