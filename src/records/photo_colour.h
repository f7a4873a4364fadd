// A colour that is read from a photograph.
#pragma once

#include "base/spot.h"
#include "photographs/read_photograph.h"
#include "records/recorded_picture.h"

#include <optional>

namespace dyeleaf {

struct PhotoColour {
    RecordedPicture photo;
    PhotoQuestion question;
    bool by_white = false; // what lies beside the swatch is white, not grey
    Spot swatch_spot, reference_spot;
    std::optional<PhotoReading> reading; // from the file, which read_pictures looks into
};

} // namespace dyeleaf
