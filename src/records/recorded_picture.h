// A picture beside the records.
#pragma once

#include "base/spot.h"
#include "pictures/picture_file.h"

#include <optional>
#include <string>

namespace dyeleaf {

// What it is of stands in the file, which read_pictures looks into.
struct RecordedPicture {
    Sourced<std::string> name; // of the file, as written
    std::optional<PictureFile> file;
};

} // namespace dyeleaf
