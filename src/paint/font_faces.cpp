#include "paint/font_faces.h"

#include "base/words.h"
#include "paint/painter.h"

#include <cairo-ft.h>
#include <ft2build.h>

#include FT_FREETYPE_H

namespace dyeleaf {

namespace {

// Cairo may keep a face longer than the painter that opened it, and a face needs its library: they go together.
struct OpenFace {
    std::shared_ptr<FT_LibraryRec_> library;
    FT_Face face = nullptr;

    OpenFace(std::shared_ptr<FT_LibraryRec_> in, const FontFace& wanted) : library(std::move(in)) {
        if (FT_New_Face(library.get(), wanted.file.c_str(), wanted.index, &face) != 0) {
            throw PaintError("the font " + in_quotes(wanted.file) + " cannot be read");
        }
    }
    OpenFace(const OpenFace&) = delete;
    OpenFace& operator=(const OpenFace&) = delete;
    ~OpenFace() { FT_Done_Face(face); }
};

void close_face(void* open_face) {
    delete static_cast<OpenFace*>(open_face);
}

const cairo_user_data_key_t open_face_key{};

CairoFontFace open(const std::shared_ptr<FT_LibraryRec_>& library, const FontFace& wanted) {
    auto open_face = std::make_unique<OpenFace>(library, wanted);
    const std::string problem = "the font " + in_quotes(wanted.file) + " cannot be used";
    CairoFontFace face{cairo_ft_font_face_create_for_ft_face(open_face->face, FT_LOAD_NO_HINTING | FT_LOAD_NO_BITMAP)};
    check(cairo_font_face_status(face.get()), problem);
    check(cairo_font_face_set_user_data(face.get(), &open_face_key, open_face.get(), close_face), problem);
    static_cast<void>(open_face.release()); // Cairo closes it
    return face;
}

} // namespace

FontFaces::FontFaces() {
    FT_Library library = nullptr;
    if (FT_Init_FreeType(&library) != 0) throw PaintError("the font library cannot be started");
    library_.reset(library, FT_Done_FreeType);
}

cairo_font_face_t* FontFaces::face(const FontFace& wanted) {
    const std::pair key{wanted.file, wanted.index};
    const auto known = faces_.find(key);
    if (known != faces_.end()) return known->second.get();
    return faces_.emplace(key, open(library_, wanted)).first->second.get();
}

} // namespace dyeleaf
