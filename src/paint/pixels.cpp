#include "paint/pixels.h"

#include "base/colour.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <cstring>

namespace dyeleaf {

namespace {

// No PNG, JPEG or drawing is read into a format that holds colour in another way.
bool holds_colour(cairo_surface_t* picture) {
    const cairo_format_t format = cairo_image_surface_get_format(picture);
    return format == CAIRO_FORMAT_ARGB32 || format == CAIRO_FORMAT_RGB24;
}

// Calls `visit` with each pixel, which it may change.
template <class Visit> void for_each_pixel(cairo_surface_t* picture, const Visit& visit) {
    if (!holds_colour(picture)) return;
    cairo_surface_flush(picture);
    const auto stride = static_cast<std::size_t>(cairo_image_surface_get_stride(picture));
    const auto height = static_cast<std::size_t>(cairo_image_surface_get_height(picture));
    const auto width = static_cast<std::size_t>(cairo_image_surface_get_width(picture));
    unsigned char* data = cairo_image_surface_get_data(picture);
    const std::uint32_t opaque = cairo_image_surface_get_format(picture) == CAIRO_FORMAT_RGB24 ? 0xff000000U : 0U;
    for (std::size_t row = 0; row < height; ++row) {
        for (std::size_t column = 0; column < width; ++column) {
            unsigned char* at = data + row * stride + column * 4;
            std::uint32_t pixel = 0;
            std::memcpy(&pixel, at, sizeof pixel);
            pixel |= opaque;
            visit(pixel);
            std::memcpy(at, &pixel, sizeof pixel);
        }
    }
    cairo_surface_mark_dirty(picture);
}

std::uint32_t channel(std::uint32_t pixel, unsigned shift) {
    return pixel >> shift & 0xffU;
}

std::uint32_t in_grey(std::uint32_t pixel) {
    const std::uint32_t alpha = channel(pixel, 24);
    if (alpha == 0) return pixel;
    const auto part = [&](unsigned shift) { return static_cast<double>(channel(pixel, shift)) / alpha; };
    const double grey = dyeleaf::in_grey(Rgb{part(16), part(8), part(0)}).red;
    const auto value = static_cast<std::uint32_t>(std::lround(grey * alpha));
    return alpha << 24U | value << 16U | value << 8U | value;
}

} // namespace

bool has_colour(cairo_surface_t* picture) {
    bool found = false;
    for_each_pixel(picture, [&](std::uint32_t pixel) {
        const bool grey = channel(pixel, 16) == channel(pixel, 8) && channel(pixel, 8) == channel(pixel, 0);
        found = found || !grey;
    });
    return found;
}

void make_grey(cairo_surface_t* picture) {
    for_each_pixel(picture, [](std::uint32_t& pixel) { pixel = in_grey(pixel); });
}

Bitmap bitmap_of(cairo_surface_t* picture) {
    Bitmap bitmap{cairo_image_surface_get_width(picture), cairo_image_surface_get_height(picture), {}, {}, {}};
    bitmap.is_grey = !has_colour(picture);
    bool opaque = true;
    for_each_pixel(picture, [&](std::uint32_t pixel) {
        const std::uint32_t alpha = channel(pixel, 24);
        opaque = opaque && alpha == 255;
        bitmap.alpha += static_cast<char>(alpha);
        for (const unsigned shift : {16U, 8U, 0U}) {
            const std::uint32_t part = alpha == 0 ? 0 : (channel(pixel, shift) * 255 + alpha / 2) / alpha;
            if (!bitmap.is_grey || shift == 0) bitmap.colours += static_cast<char>(std::min(part, 255U));
        }
    });
    if (opaque) bitmap.alpha.clear();
    return bitmap;
}

} // namespace dyeleaf
