// Looks into a picture file: what it is, how large, which way up, and whether all of it is there.
#pragma once

#include "pictures/picture_file.h"

#include <string>
#include <variant>

namespace dyeleaf {

// Why a file cannot be placed. The message goes on after the file's name: "is a HEIC picture …".
struct PictureFault {
    std::string message;
    std::string help;
};
using PictureOrFault = std::variant<PictureFile, PictureFault>;

// A JPEG, PNG or SVG file, told by what it holds and not by its name. Never more pixels than this a side: one that
// claims more would fill the memory, and is refused before it is unpacked.
inline constexpr int most_pixels = 10'000;

PictureOrFault read_picture(const std::string& file);

} // namespace dyeleaf
