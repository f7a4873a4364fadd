// Paths moved, scaled and turned.
#pragma once

#include "display/display_list.h"

namespace dyeleaf {

Path transformed(Path path, const Transform& transform);

} // namespace dyeleaf
