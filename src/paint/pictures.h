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
    // Its pixels as stored, not yet turned upright; belongs to this object. A file that is gone or broken is a
    // PaintError that names it.
    cairo_surface_t* picture(const PictureFile& picture, bool grey);

  private:
    std::map<std::pair<std::string, bool>, CairoSurface> pictures_;
};

} // namespace dyeleaf
