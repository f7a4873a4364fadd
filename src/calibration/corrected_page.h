// Whole pages, moved.
#pragma once

#include "calibration/misprint.h"
#include "display/display_list.h"

namespace dyeleaf {

// Turns a page that lies so that it stands; one that stands stays.
Transform standing(Size page);
Size standing_size(Size page);

// The page, standing, so that the printer puts every part of it where it would be without the misprint.
DisplayList corrected(DisplayList page, const Misprint& misprint);

} // namespace dyeleaf
