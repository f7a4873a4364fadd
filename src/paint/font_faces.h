// Font files opened for Cairo, each once.
#pragma once

#include "display/display_list.h"
#include "paint/cairo_handles.h"

#include <map>
#include <memory>
#include <string>
#include <utility>

struct FT_LibraryRec_;

namespace dyeleaf {

class FontFaces {
  public:
    FontFaces();

    // Belongs to this object. A file that cannot be opened is a PaintError.
    cairo_font_face_t* face(const FontFace& wanted);

  private:
    std::shared_ptr<FT_LibraryRec_> library_;
    std::map<std::pair<std::string, int>, CairoFontFace> faces_;
};

} // namespace dyeleaf
