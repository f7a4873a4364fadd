// PNG files read for Cairo, each once.
#pragma once

#include "paint/cairo_handles.h"

#include <map>
#include <string>

namespace dyeleaf {

class Pictures {
  public:
    // Belongs to this object. A file that is no PNG, is broken or is larger than 10,000 pixels a side is a PaintError
    // that names it.
    cairo_surface_t* picture(const std::string& file);

  private:
    std::map<std::string, CairoSurface> pictures_;
};

} // namespace dyeleaf
