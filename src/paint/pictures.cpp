#include "paint/pictures.h"

#include "base/words.h"
#include "paint/painter.h"

#include <array>
#include <cstdint>
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

} // namespace

cairo_surface_t* Pictures::picture(const std::string& file) {
    const auto known = pictures_.find(file);
    if (known != pictures_.end()) return known->second.get();
    return pictures_.emplace(file, read(file)).first->second.get();
}

} // namespace dyeleaf
