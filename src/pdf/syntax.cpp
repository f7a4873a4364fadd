#include "pdf/syntax.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <cstdint>
#include <iterator>

namespace dyeleaf {

namespace {

// The next character of sound UTF-8, taken off the front.
std::uint32_t take_character(std::string_view& rest) {
    const auto first = static_cast<unsigned char>(rest.front());
    const std::size_t length = first < 0x80 ? 1U : first < 0xe0 ? 2U : first < 0xf0 ? 3U : 4U;
    std::uint32_t value = length == 1 ? first : first & (0x7fU >> length);
    for (std::size_t i = 1; i < std::min(length, rest.size()); ++i)
        value = value << 6U | (static_cast<unsigned char>(rest[i]) & 0x3fU);
    rest.remove_prefix(std::min(length, rest.size()));
    return value;
}

} // namespace

void append_number(std::string& text, double value, int decimals) {
    constexpr std::array<std::int64_t, 7> powers = {1, 10, 100, 1'000, 10'000, 100'000, 1'000'000};
    constexpr double most = 1e9;
    const std::int64_t power = powers.at(static_cast<std::size_t>(decimals));
    std::int64_t scaled = std::llround(std::clamp(value, -most, most) * static_cast<double>(power));
    if (scaled < 0) {
        text += '-';
        scaled = -scaled;
    }
    const std::int64_t whole = scaled / power;
    std::int64_t rest = scaled % power;
    if (whole > 0 || rest == 0) {
        std::array<char, 20> digits{};
        text.append(digits.data(), std::to_chars(digits.data(), digits.data() + digits.size(), whole).ptr);
    }
    if (rest == 0) return;
    text += '.';
    for (std::int64_t place = power / 10; rest > 0; place /= 10) {
        text += static_cast<char>('0' + rest / place);
        rest %= place;
    }
}

std::string byte_string(std::string_view bytes) {
    std::string text = "(";
    for (const char c : bytes) {
        if (c == '\r') {
            text += "\\r";
            continue;
        }
        if (c == '(' || c == ')' || c == '\\') text += '\\';
        text += c;
    }
    return text + ")";
}

std::string utf16_digits(std::string_view utf8) {
    std::string digits;
    while (!utf8.empty()) {
        const std::uint32_t character = take_character(utf8);
        if (character < 0x10000) {
            fmt::format_to(std::back_inserter(digits), "{:04X}", character);
        } else {
            const std::uint32_t rest = character - 0x10000;
            fmt::format_to(std::back_inserter(digits), "{:04X}{:04X}", 0xd800U + (rest >> 10U),
                           0xdc00U + (rest & 0x3ffU));
        }
    }
    return digits;
}

std::string text_string(std::string_view utf8) {
    const bool plain = std::ranges::all_of(utf8, [](char c) { return c >= ' ' && c <= '~'; });
    return plain ? byte_string(utf8) : "<FEFF" + utf16_digits(utf8) + ">";
}

std::string reference(int object) {
    return std::to_string(object) + " 0 R";
}

} // namespace dyeleaf
