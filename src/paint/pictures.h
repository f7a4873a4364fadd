// PNG files read for Cairo, each once.
#pragma once

#include "paint/cairo_handles.h"

#include <map>
#include <string>
#include <utility>

namespace dyeleaf {

class Pictures {
  public:
    // In its colours or in greys. Belongs to this object. A file that is no PNG, is broken or is larger than 10,000
    // pixels a side is a PaintError that names it.
    cairo_surface_t* picture(const std::string& file, bool grey);

  private:
    std::map<std::pair<std::string, bool>, CairoSurface> pictures_;
};

} // namespace dyeleaf
