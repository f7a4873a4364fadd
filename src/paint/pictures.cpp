#include "paint/pictures.h"

#include "base/words.h"
#include "paint/painter.h"
#include "paint/pixels.h"
#include "pictures/file_bytes.h"
#include "pictures/jpeg.h"

#include <algorithm>
#include <cstdint>
#include <cstring>
#include <memory>

namespace dyeleaf {

namespace {

[[noreturn]] void refuse_picture(const std::string& file, const std::string& why) {
    throw PaintError("the picture " + in_quotes(file) + " " + why);
}

std::string bytes_of(const std::string& file) {
    auto bytes = file_bytes(file);
    if (!bytes) refuse_picture(file, "cannot be opened");
    return std::move(*bytes);
}

CairoSurface blank(const PictureFile& picture) {
    CairoSurface surface{cairo_image_surface_create(CAIRO_FORMAT_RGB24, picture.stored.across, picture.stored.down)};
    if (cairo_surface_status(surface.get()) != CAIRO_STATUS_SUCCESS)
        refuse_picture(picture.file, "is too large to be held");
    return surface;
}

CairoSurface unpacked_jpeg(const PictureFile& picture) {
    CairoSurface surface = blank(picture);
    unsigned char* place = cairo_image_surface_get_data(surface.get());
    const int stride = cairo_image_surface_get_stride(surface.get());
    int rows = 0;
    const bool whole = unpack_jpeg(bytes_of(picture.file), [&](std::span<const unsigned char> row) {
        if (rows++ >= picture.stored.down) return; // the file has changed meanwhile
        const std::size_t across = std::min(row.size() / 3, static_cast<std::size_t>(picture.stored.across));
        for (std::size_t i = 0; i < across; ++i) {
            const std::uint32_t pixel =
                0xff000000U | std::uint32_t{row[i * 3]} << 16U | std::uint32_t{row[i * 3 + 1]} << 8U | row[i * 3 + 2];
            std::memcpy(place + i * 4, &pixel, sizeof pixel);
        }
        place += stride;
    });
    cairo_surface_mark_dirty(surface.get());
    if (!whole) refuse_picture(picture.file, "is broken: it cannot be read to its end");
    return surface;
}

CairoSurface png(const PictureFile& picture) {
    CairoSurface surface{cairo_image_surface_create_from_png(picture.file.c_str())};
    if (cairo_surface_status(surface.get()) != CAIRO_STATUS_SUCCESS)
        refuse_picture(picture.file, "is broken: it cannot be read to its end");
    return surface;
}

} // namespace

cairo_surface_t* Pictures::picture(const PictureFile& picture, bool grey) {
    const auto [found, is_new] = pictures_.try_emplace({picture.file, grey});
    CairoSurface& surface = found->second;
    if (!is_new) return surface.get();
    surface = picture.kind == PictureKind::png ? png(picture) : unpacked_jpeg(picture);
    if (grey) make_grey(surface.get());
    return surface.get();
}

} // namespace dyeleaf
