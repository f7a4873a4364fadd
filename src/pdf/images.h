// Pictures and drawings in a document, each file held once (ISO 32000-1, 8.9 and 8.10).
#pragma once

#include "paint/artwork.h"
#include "pdf/object_file.h"
#include "pdf/page_matrix.h"

#include <map>
#include <string>
#include <tuple>
#include <utility>

namespace dyeleaf {

// What shows a picture: an object, and where its own coordinates lie in a rectangle of `width` by `height` points with
// its origin at the top left.
struct ShownPicture {
    int object = 0;
    PageMatrix placed;
};

class Images {
  public:
    explicit Images(ObjectFile& file) : file_(file) {}

    // A JPEG in its colours goes in byte for byte. A file that is gone or broken is a PaintError that names it.
    ShownPicture show(const PictureFile& picture, bool grey, double width, double height);

  private:
    int image(const PictureFile& picture, bool grey);
    int packed_jpeg(const PictureFile& picture);
    int put(const Bitmap& bitmap);
    ShownPicture show_drawing(const PictureFile& picture, bool grey, double width, double height);
    std::string colour_space(const std::string& profile, bool grey);

    ObjectFile& file_;
    Artwork artwork_;
    std::map<std::pair<std::string, bool>, int> pictures_; // by file and whether grey
    std::map<std::string, int> drawings_;
    std::map<std::string, bool> coloured_;
    std::map<std::tuple<std::string, double, double>, int> grey_drawings_; // by file and size
    std::map<std::string, int> profiles_;
};

} // namespace dyeleaf
