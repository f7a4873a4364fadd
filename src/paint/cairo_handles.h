// Cairo's objects as owned values, and its statuses as exceptions.
#pragma once

#include <cairo.h>

#include <memory>
#include <string>

namespace dyeleaf {

struct CairoDeleter {
    void operator()(cairo_t* context) const { cairo_destroy(context); }
    void operator()(cairo_surface_t* surface) const { cairo_surface_destroy(surface); }
    void operator()(cairo_font_face_t* face) const { cairo_font_face_destroy(face); }
    void operator()(cairo_font_options_t* options) const { cairo_font_options_destroy(options); }
};
using CairoContext = std::unique_ptr<cairo_t, CairoDeleter>;
using CairoSurface = std::unique_ptr<cairo_surface_t, CairoDeleter>;
using CairoFontFace = std::unique_ptr<cairo_font_face_t, CairoDeleter>;
using CairoFontOptions = std::unique_ptr<cairo_font_options_t, CairoDeleter>;

// PaintError "`what`: …" unless all is well.
void check(cairo_status_t status, const std::string& what);
// A failing context leaves the surface looking sound, and the other way round: both are asked.
void check(cairo_t* context, const std::string& what);

// For surfaces that are written to a std::string, `bytes`.
cairo_status_t append_bytes(void* bytes, const unsigned char* data, unsigned int length);

} // namespace dyeleaf
