// Pixels of Cairo's image surfaces: words of alpha, red, green and blue, from high to low, the colours multiplied by
// alpha.
#pragma once

#include "paint/bitmap.h"

#include <cairo.h>

namespace dyeleaf {

// Whether any pixel is more than black, white or grey.
bool has_colour(cairo_surface_t* picture);

void make_grey(cairo_surface_t* picture);

Bitmap bitmap_of(cairo_surface_t* picture);

} // namespace dyeleaf
