// What several kinds of pictures can have wrong with them.
#pragma once

#include "pictures/read_picture.h"

namespace dyeleaf {

PictureFault too_large(Pixels pixels);
PictureFault broken();

// Whether both sides are at least one pixel and no more than `most_pixels`.
bool is_sound(Pixels pixels);

} // namespace dyeleaf
