// The pixels of some parts of a photograph.
#pragma once

#include "pictures/read_picture.h"
#include "pictures/stated_colours.h"

#include <array>
#include <cstdint>
#include <span>
#include <variant>
#include <vector>

namespace dyeleaf {

// In pixels from the upper left corner of the picture as it is seen.
struct PixelArea {
    int left = 0, top = 0, across = 0, down = 0;
    friend bool operator==(const PixelArea&, const PixelArea&) = default;
};

// Red, green and blue as they are coded, 0 to 65535 whatever the depth of the file.
using CodedPixel = std::array<std::uint16_t, 3>;

// In rows as they lie in the file.
struct PixelGrid {
    int across = 0, down = 0;
    std::vector<CodedPixel> pixels;
};

struct UnpackedAreas {
    StatedColours colours;
    std::vector<PixelGrid> areas; // in the order asked for
};

// The file is unpacked once, down to the last row that is asked for, and of each area `most` pixels at the most are
// kept: those in every nth row and column. Requires: a JPEG or PNG picture, and areas inside it with at least a pixel.
std::variant<UnpackedAreas, PictureFault> unpack_areas(const PictureFile& picture, std::span<const PixelArea> areas,
                                                       std::size_t most);

} // namespace dyeleaf
