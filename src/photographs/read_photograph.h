// The colours of swatches in a photograph.
#pragma once

#include "photographs/photo_area.h"
#include "photographs/photo_reading.h"
#include "pictures/picture_file.h"

#include <span>
#include <string>
#include <variant>
#include <vector>

namespace dyeleaf {

// Where a swatch lies in a picture, and where the grey or white that it was laid beside.
struct PhotoQuestion {
    PhotoArea swatch, reference;
    Percent reflectance; // of the reference
};

// Why a question has no answer. The message is a sentence, or, where it is about the picture, goes on after its name.
struct PhotoFault {
    enum class About { picture, swatch, reference };
    About about = About::picture;
    std::string message, help;
};

using PhotoAnswer = std::variant<PhotoReading, PhotoFault>;

// An answer for each question. The file is unpacked once for all of them, and no more of it kept than 40 000 pixels an
// area. Its numbers are understood by the profile in it, else as sRGB.
std::vector<PhotoAnswer> read_photograph(const PictureFile& picture, std::span<const PhotoQuestion> questions);

} // namespace dyeleaf
