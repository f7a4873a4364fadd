#include "paint/artwork.h"

#include "paint/drawings.h"
#include "paint/pictures.h"
#include "paint/pixels.h"

#include <cairo-pdf.h>

namespace dyeleaf {

struct Artwork::Files {
    Pictures pictures;
    Drawings drawings;
};

Artwork::Artwork() : files_(std::make_unique<Files>()) {}
Artwork::~Artwork() = default;

Bitmap Artwork::pixels(const PictureFile& picture, bool grey) {
    return bitmap_of(files_->pictures.picture(picture, grey));
}

Bitmap Artwork::grey_pixels(const PictureFile& drawing, double width, double height) {
    return bitmap_of(files_->drawings.in_grey(drawing.file, width, height));
}

bool Artwork::is_coloured(const PictureFile& drawing) {
    return files_->drawings.is_coloured(drawing.file, drawing.shape);
}

std::string Artwork::as_pdf(const PictureFile& drawing) {
    std::string bytes;
    const double width = page_height * drawing.shape;
    const CairoSurface surface{cairo_pdf_surface_create_for_stream(append_bytes, &bytes, width, page_height)};
    cairo_pdf_surface_restrict_to_version(surface.get(), CAIRO_PDF_VERSION_1_4);
    const CairoContext context{cairo_create(surface.get())};
    files_->drawings.draw(context.get(), drawing.file, width, page_height);
    cairo_show_page(context.get());
    check(context.get(), "a drawing cannot be painted");
    cairo_surface_finish(surface.get());
    check(cairo_surface_status(surface.get()), "a drawing cannot be finished");
    return bytes;
}

} // namespace dyeleaf
