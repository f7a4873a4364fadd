#include "text/plain_text.h"

#include <glib.h>

#include <algorithm>
#include <array>
#include <memory>
#include <string_view>

namespace dyeleaf {

namespace {

struct Range {
    char32_t first, last;
};

// Unicode 15, categories Cc and Cf and the default-ignorable code points, without those that shape or mean something
// visible: U+00AD soft hyphen, U+200C and U+200D joiners, the Arabic and Kaithi number signs.
constexpr std::array invisible = {
    Range{0x0000, 0x0009}, Range{0x000B, 0x001F},   Range{0x007F, 0x009F},   Range{0x034F, 0x034F},
    Range{0x061C, 0x061C}, Range{0x115F, 0x1160},   Range{0x17B4, 0x17B5},   Range{0x180B, 0x180F},
    Range{0x200B, 0x200B}, Range{0x200E, 0x200F},   Range{0x202A, 0x202E},   Range{0x2060, 0x206F},
    Range{0x3164, 0x3164}, Range{0xFE00, 0xFE0F},   Range{0xFEFF, 0xFEFF},   Range{0xFFA0, 0xFFA0},
    Range{0xFFF0, 0xFFFB}, Range{0x1BCA0, 0x1BCA3}, Range{0x1D173, 0x1D17A}, Range{0xE0000, 0xE0FFF},
};

bool is_invisible(gunichar character) {
    return std::ranges::any_of(invisible, [&](Range r) { return r.first <= character && character <= r.last; });
}

bool is_line_end(const char* at) {
    const gunichar character = g_utf8_get_char(at);
    if (character == '\r') return *g_utf8_next_char(at) != '\n'; // the pair counts once
    return character == '\n' || character == 0x85 || character == 0x2028 || character == 0x2029;
}

void drop_blanks_at_end(std::string& text) {
    text.erase(text.find_last_not_of(' ') + 1);
}

} // namespace

std::string plain_text(const std::string& text) {
    const std::unique_ptr<char, decltype(&g_free)> valid{
        g_utf8_make_valid(text.data(), static_cast<gssize>(text.size())), g_free};
    std::string plain;
    const char* next = nullptr;
    for (const char* at = valid.get(); *at != '\0'; at = next) {
        next = g_utf8_next_char(at);
        const gunichar character = g_utf8_get_char(at);
        if (is_line_end(at)) {
            drop_blanks_at_end(plain);
            plain += '\n';
        } else if (character == '\t') {
            plain += ' ';
        } else if (!is_invisible(character)) {
            plain.append(at, next);
        }
    }
    plain.erase(plain.find_last_not_of(" \n") + 1);
    return plain;
}

std::string without(const std::string& text, const std::string& character) {
    std::string rest;
    std::string_view left = text;
    for (auto at = left.find(character); at != std::string_view::npos; at = left.find(character)) {
        rest += left.substr(0, at);
        left.remove_prefix(at + character.size());
    }
    return rest.append(left);
}

} // namespace dyeleaf
