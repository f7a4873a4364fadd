// JPEG and PNG files read for Cairo, each once.
#pragma once

#include "paint/cairo_handles.h"
#include "pictures/picture_file.h"

#include <map>
#include <string>
#include <utility>

namespace dyeleaf {

class Pictures {
  public:
    // What a picture is for: a file that holds a JPEG as it is, or one that holds its pixels, in their colours or grey.
    enum class Form { packed, pixels, grey };

    // As stored, not yet turned upright; belongs to this object. A packed JPEG has no pixels to look at, only its own
    // bytes. A file that is gone or broken is a PaintError that names it.
    cairo_surface_t* picture(const PictureFile& picture, Form form);

  private:
    std::map<std::pair<std::string, Form>, CairoSurface> pictures_;
};

// From stored pixels to pixels as seen.
cairo_matrix_t upright(const PictureFile& picture);

} // namespace dyeleaf
