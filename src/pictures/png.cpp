#include "pictures/png.h"

#include "pictures/faults.h"

#include <cstdint>

namespace dyeleaf {

namespace {

using namespace std::literals;

// PNG specification, third edition, 5.2 and 11.2.1: the size stands in the first chunk.
constexpr std::string_view start = "\x89PNG\r\n\x1a\n\0\0\0\rIHDR"sv;
constexpr std::size_t signature = 8;
constexpr std::size_t around = 12; // of a chunk: its length, name and checksum

std::uint32_t number(std::string_view bytes, std::size_t at) {
    std::uint32_t value = 0;
    for (std::size_t i = at; i < at + 4; ++i)
        value = value << 8U | static_cast<unsigned char>(bytes[i]);
    return value;
}

} // namespace

// 5.3: chunk after chunk. What they hold is checked when it is painted.
bool has_png_chunk(std::string_view bytes, std::string_view name) {
    for (std::size_t at = signature; at + around <= bytes.size(); at += around + number(bytes, at)) {
        if (bytes.substr(at + 4, 4) == name) return true;
    }
    return false;
}

bool is_png(std::string_view bytes) {
    return bytes.starts_with(start.substr(0, signature));
}

PictureOrFault read_png(std::string_view bytes) {
    if (!bytes.starts_with(start) || bytes.size() < start.size() + 8) return broken();
    const std::uint32_t across = number(bytes, start.size());
    const std::uint32_t down = number(bytes, start.size() + 4);
    if (across > INT32_MAX || down > INT32_MAX) return broken();
    const Pixels stored{static_cast<int>(across), static_cast<int>(down)};
    if (across == 0 || down == 0) return broken();
    if (!is_sound(stored)) return too_large(stored);
    if (!has_png_chunk(bytes, "IEND")) return broken();
    return PictureFile{{}, PictureKind::png, stored, 1, static_cast<double>(across) / down};
}

} // namespace dyeleaf
