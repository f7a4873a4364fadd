#include "base/web_address.h"

#include <algorithm>

namespace dyeleaf {

namespace {

bool is_letter(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
}

bool is_letter_or_digit(char c) {
    return is_letter(c) || (c >= '0' && c <= '9');
}

} // namespace

bool is_address_character(char c) {
    return is_letter_or_digit(c) || std::string_view{"-._~:/?#@!$&'*+=%,;"}.find(c) != std::string_view::npos;
}

bool is_host(std::string_view text) {
    const std::size_t dot = text.rfind('.');
    if (dot == std::string_view::npos || dot == 0 || text.size() - dot < 3) return false;
    if (!std::ranges::all_of(text.substr(dot + 1), is_letter) || text.find("..") != std::string_view::npos)
        return false;
    return std::ranges::all_of(text, [](char c) { return is_letter_or_digit(c) || c == '-' || c == '.'; });
}

bool is_web_address(std::string_view text) {
    if (!std::ranges::all_of(text, is_address_character)) return false;
    for (const std::string_view scheme : {"https://", "http://"}) {
        if (!text.starts_with(scheme)) continue;
        const std::string_view rest = text.substr(scheme.size());
        return is_host(rest.substr(0, rest.find('/')));
    }
    return false;
}

std::string percent_encoded(std::string_view text) {
    constexpr std::string_view digits = "0123456789ABCDEF";
    std::string result;
    for (const char c : text) {
        const auto byte = static_cast<unsigned char>(c);
        if (is_letter_or_digit(c) || std::string_view{"-._~"}.find(c) != std::string_view::npos) {
            result += c;
        } else {
            result += {'%', digits[byte / 16], digits[byte % 16]};
        }
    }
    return result;
}

} // namespace dyeleaf
