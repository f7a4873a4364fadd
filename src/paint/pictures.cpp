#include "paint/pictures.h"

#include "base/colour.h"
#include "base/words.h"
#include "paint/painter.h"

#include <array>
#include <cmath>
#include <cstdint>
#include <cstring>
#include <fstream>

namespace dyeleaf {

namespace {

constexpr std::uint32_t most_pixels = 10'000; // a side; a picture that claims more would fill the memory

[[noreturn]] void refuse(const std::string& file, const std::string& why) {
    throw PaintError("the picture " + in_quotes(file) + " " + why);
}

// The size stands in the first chunk (PNG specification, third edition, 5.2 and 11.2.1).
void check_header(const std::string& file) {
    constexpr std::string_view start{"\x89PNG\r\n\x1a\n\0\0\0\rIHDR", 16};
    std::ifstream stream{file, std::ios::binary};
    if (!stream) refuse(file, "cannot be opened");
    std::array<char, 24> header{};
    stream.read(header.data(), header.size());
    if (!stream || std::string_view{header.data(), start.size()} != start) refuse(file, "is not a PNG file");
    const auto number = [&](std::size_t at) {
        std::uint32_t value = 0;
        for (std::size_t i = at; i < at + 4; ++i)
            value = value << 8U | static_cast<unsigned char>(header[i]);
        return value;
    };
    if (number(16) > most_pixels || number(20) > most_pixels) {
        refuse(file, "is " + std::to_string(number(16)) + " by " + std::to_string(number(20)) +
                         " pixels large; the most is " + std::to_string(most_pixels) + " a side");
    }
}

CairoSurface read(const std::string& file) {
    check_header(file);
    CairoSurface picture{cairo_image_surface_create_from_png(file.c_str())};
    if (cairo_surface_status(picture.get()) != CAIRO_STATUS_SUCCESS)
        refuse(file, "is broken: it cannot be read to its end");
    return picture;
}

// Pixels are words of alpha, red, green and blue, from high to low, the colours multiplied by alpha.
std::uint32_t in_grey(std::uint32_t pixel) {
    const std::uint32_t alpha = pixel >> 24U;
    if (alpha == 0) return pixel;
    const auto channel = [&](unsigned shift) { return static_cast<double>(pixel >> shift & 0xffU) / alpha; };
    const double grey = dyeleaf::in_grey(Rgb{channel(16), channel(8), channel(0)}).red;
    const auto value = static_cast<std::uint32_t>(std::lround(grey * alpha));
    return alpha << 24U | value << 16U | value << 8U | value;
}

void make_grey(cairo_surface_t* picture) {
    const cairo_format_t format = cairo_image_surface_get_format(picture);
    if (format != CAIRO_FORMAT_ARGB32 && format != CAIRO_FORMAT_RGB24)
        return; // no PNG is read into another that holds colour
    const auto stride = static_cast<std::size_t>(cairo_image_surface_get_stride(picture));
    const auto height = static_cast<std::size_t>(cairo_image_surface_get_height(picture));
    const auto width = static_cast<std::size_t>(cairo_image_surface_get_width(picture));
    unsigned char* data = cairo_image_surface_get_data(picture);
    const std::uint32_t opaque = format == CAIRO_FORMAT_RGB24 ? 0xff000000U : 0U;
    for (std::size_t row = 0; row < height; ++row) {
        for (std::size_t column = 0; column < width; ++column) {
            unsigned char* at = data + row * stride + column * 4;
            std::uint32_t pixel = 0;
            std::memcpy(&pixel, at, sizeof pixel);
            pixel = in_grey(pixel | opaque);
            std::memcpy(at, &pixel, sizeof pixel);
        }
    }
    cairo_surface_mark_dirty(picture);
}

} // namespace

cairo_surface_t* Pictures::picture(const std::string& file, bool grey) {
    const auto known = pictures_.find({file, grey});
    if (known != pictures_.end()) return known->second.get();
    CairoSurface picture = read(file);
    if (grey) make_grey(picture.get());
    return pictures_.emplace(std::pair{file, grey}, std::move(picture)).first->second.get();
}

} // namespace dyeleaf
