#include "paint/drawings.h"

#include "base/words.h"
#include "paint/painter.h"
#include "paint/pixels.h"
#include "pictures/file_bytes.h"

#include <algorithm>
#include <cmath>

#include <librsvg/rsvg.h>

namespace dyeleaf {

namespace {

[[noreturn]] void refuse(const std::string& file) {
    throw PaintError("the drawing " + in_quotes(file) + " cannot be drawn: save it again as a plain SVG");
}

} // namespace

void DrawingDeleter::operator()(RsvgHandle* drawing) const {
    g_object_unref(drawing);
}

// From memory and without an address, so that it can load nothing else.
RsvgHandle* Drawings::drawing(const std::string& file) {
    auto& known = drawings_[file];
    if (known) return known.get();
    const auto bytes = file_bytes(file);
    if (!bytes) refuse(file);
    known.reset(rsvg_handle_new_from_data(reinterpret_cast<const guint8*>(bytes->data()), bytes->size(), nullptr));
    if (!known) refuse(file);
    return known.get();
}

void Drawings::draw(cairo_t* context, const std::string& file, double width, double height) {
    const RsvgRectangle place{0, 0, width, height};
    if (rsvg_handle_render_document(drawing(file), context, &place, nullptr) == FALSE) refuse(file);
}

// Looked for in a small picture of it.
bool Drawings::is_coloured(const std::string& file, double shape) {
    if (const auto known = coloured_.find(file); known != coloured_.end()) return known->second;
    constexpr double side = 256;
    const double scale = side / std::max(shape, 1.0);
    const CairoSurface small{cairo_image_surface_create(CAIRO_FORMAT_ARGB32, static_cast<int>(std::ceil(scale * shape)),
                                                        static_cast<int>(std::ceil(scale)))};
    const CairoContext context{cairo_create(small.get())};
    draw(context.get(), file, scale * shape, scale);
    check(context.get(), "a drawing cannot be looked at");
    return coloured_[file] = has_colour(small.get());
}

cairo_surface_t* Drawings::in_grey(const std::string& file, double width, double height) {
    constexpr double fine = 1200.0 / 72; // pixels to the point: the dots of a good laser printer
    constexpr double most = 4000;        // a side
    const double scale = std::min(fine, most / std::max(width, height));
    const auto pixels = [&](double side) { return std::max(1, static_cast<int>(std::lround(side * scale))); };
    CairoSurface& known = greys_[{file, pixels(height)}];
    if (known) return known.get();
    known.reset(cairo_image_surface_create(CAIRO_FORMAT_ARGB32, pixels(width), pixels(height)));
    const CairoContext context{cairo_create(known.get())};
    draw(context.get(), file, pixels(width), pixels(height));
    check(context.get(), "a drawing cannot be made grey");
    make_grey(known.get());
    return known.get();
}

} // namespace dyeleaf
