#include "base/words.h"

#include "base/controls.h"

#include <algorithm>

namespace dyeleaf {

namespace {

char small_letter(char c) {
    return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
}

} // namespace

std::string_view trimmed(std::string_view text) {
    constexpr std::string_view blank = " \t\r\n";
    const auto first = text.find_first_not_of(blank);
    if (first == std::string_view::npos) return {};
    return text.substr(first, text.find_last_not_of(blank) - first + 1);
}

std::string lower_case(std::string_view text) {
    std::string lower{text};
    std::ranges::transform(lower, lower.begin(), small_letter);
    return lower;
}

bool same_but_for_case(std::string_view a, std::string_view b) {
    return std::ranges::equal(a, b, {}, small_letter, small_letter);
}

std::string joined(const std::vector<std::string>& parts, std::string_view between) {
    std::string text;
    for (const std::string& part : parts) {
        if (!text.empty()) text += between;
        text += part;
    }
    return text;
}

void add_once(std::vector<std::string>& texts, const std::string& text) {
    if (!text.empty() && std::ranges::find(texts, text) == texts.end()) texts.push_back(text);
}

std::string in_quotes(std::string_view text) {
    return "“" + with_controls_shown(text) + "”";
}

std::string counted(int count, std::string_view one, std::string_view many) {
    return std::to_string(count) + " " + std::string{count == 1 ? one : many};
}

namespace {

bool continues(char byte) {
    return (static_cast<unsigned char>(byte) & 0xC0U) == 0x80U;
}

// Bytes of the character that starts at `at`, or 0 when it is not well formed (Unicode 15, table 3-7).
std::size_t character_bytes(std::string_view text, std::size_t at) {
    const auto byte = [&](std::size_t offset) {
        return at + offset < text.size() ? static_cast<unsigned char>(text[at + offset]) : 0U;
    };
    const unsigned first = byte(0);
    if (first < 0x80) return 1;
    std::size_t bytes = 0;
    unsigned lowest = 0x80;
    unsigned highest = 0xBF;
    if (first >= 0xC2 && first <= 0xDF) {
        bytes = 2;
    } else if (first >= 0xE0 && first <= 0xEF) {
        bytes = 3;
        if (first == 0xE0) lowest = 0xA0;
        if (first == 0xED) highest = 0x9F;
    } else if (first >= 0xF0 && first <= 0xF4) {
        bytes = 4;
        if (first == 0xF0) lowest = 0x90;
        if (first == 0xF4) highest = 0x8F;
    } else {
        return 0;
    }
    if (byte(1) < lowest || byte(1) > highest) return 0;
    for (std::size_t i = 2; i < bytes; ++i) {
        if (byte(i) < 0x80 || byte(i) > 0xBF) return 0;
    }
    return bytes;
}

} // namespace

std::size_t invalid_utf8(std::string_view text) {
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t bytes = character_bytes(text, at);
        if (bytes == 0) return at;
        at += bytes;
    }
    return std::string_view::npos;
}

int code_points(std::string_view text) {
    return static_cast<int>(std::ranges::count_if(text, [](char byte) { return !continues(byte); }));
}

std::string shortened(std::string_view text, int most) {
    int seen = 0;
    for (std::size_t at = 0; at < text.size(); ++at) {
        if (continues(text[at])) continue;
        if (seen == most) return std::string{text.substr(0, at)} + "…";
        ++seen;
    }
    return std::string{text};
}

} // namespace dyeleaf
