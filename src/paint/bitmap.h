// A picture as rows of pixels, without a drawing library's padding.
#pragma once

#include <string>

namespace dyeleaf {

struct Bitmap {
    int across = 0, down = 0;
    std::string colours; // from the top left: red, green and blue, or one grey where all pixels are
    bool is_grey = false;
    std::string alpha; // one byte a pixel; empty: all opaque
};

} // namespace dyeleaf
