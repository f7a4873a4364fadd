#include "pictures/known_formats.h"

#include <array>

namespace dyeleaf {

namespace {

struct Signature {
    std::size_t at;
    std::string_view bytes;
    std::string_view format;
};

using namespace std::literals;

// ISO/IEC 23008-12 (HEIC, by its brands), AVIF 1.1, RFC 9649 (WebP), GIF89a, TIFF 6.0, ISO 32000-1; BMP from memory.
constexpr std::array signatures = {
    Signature{4, "ftypheic"sv, "HEIC"},       Signature{4, "ftypheix"sv, "HEIC"}, Signature{4, "ftypmif1"sv, "HEIC"},
    Signature{4, "ftypmsf1"sv, "HEIC"},       Signature{4, "ftyphevc"sv, "HEIC"}, Signature{4, "ftypavif"sv, "AVIF"},
    Signature{8, "WEBP"sv, "WebP"},           Signature{0, "GIF8"sv, "GIF"},      Signature{0, "II\x2a\x00"sv, "TIFF"},
    Signature{0, "MM\x00\x2a"sv, "TIFF"},     Signature{0, "%PDF-"sv, "PDF"},     Signature{0, "BM"sv, "BMP"},
    Signature{0, "\x1f\x8b"sv, "compressed"},
};

} // namespace

std::string foreign_format(std::string_view bytes) {
    for (const Signature& known : signatures) {
        if (bytes.size() >= known.at && bytes.substr(known.at).starts_with(known.bytes))
            return std::string{known.format};
    }
    return {};
}

} // namespace dyeleaf
