// Pictures and drawings in forms that a PDF holds: pixels in rows, or a small PDF of their own.
#pragma once

#include "paint/bitmap.h"

#include "pictures/picture_file.h"

#include <memory>
#include <string>

namespace dyeleaf {

// Files are read once each. One that is gone or broken is a PaintError that names it.
class Artwork {
  public:
    Artwork();
    ~Artwork();
    Artwork(const Artwork&) = delete;
    Artwork& operator=(const Artwork&) = delete;

    // The pixels of a JPEG or PNG as stored, not yet turned upright.
    Bitmap pixels(const PictureFile& picture, bool grey);
    // A drawing in greys, fine enough for any press at this size in points.
    Bitmap grey_pixels(const PictureFile& drawing, double width, double height);
    [[nodiscard]] bool is_coloured(const PictureFile& drawing);
    // A PDF, version 1.4, with the drawing on its one page, in the drawing's shape and `page_height` points tall.
    std::string as_pdf(const PictureFile& drawing);
    static constexpr double page_height = 100;

  private:
    struct Files;
    std::unique_ptr<Files> files_;
};

} // namespace dyeleaf
