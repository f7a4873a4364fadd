#include "layout/link_target.h"

#include "base/words.h"

#include <algorithm>

namespace dyeleaf {

namespace {

bool is_letter(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
}

// The letters, digits and signs of a URL (RFC 3986, 2.2 and 2.3), less those that prose puts around one.
bool belongs(char c) {
    return is_letter(c) || (c >= '0' && c <= '9') ||
           std::string_view{"-._~:/?#@!$&'*+=%,;"}.find(c) != std::string_view::npos;
}

// At least two labels of letters, digits and hyphens, the last of letters alone (RFC 1123, 2.1).
bool is_host(std::string_view host) {
    const std::size_t dot = host.rfind('.');
    if (dot == std::string_view::npos || dot == 0 || host.size() - dot < 3) return false;
    const std::string_view last = host.substr(dot + 1);
    if (!std::ranges::all_of(last, is_letter) || host.find("..") != std::string_view::npos) return false;
    return std::ranges::all_of(host,
                               [](char c) { return is_letter(c) || (c >= '0' && c <= '9') || c == '-' || c == '.'; });
}

} // namespace

std::string link_target(std::string_view text) {
    const std::string_view words = trimmed(text);
    if (words.empty() || !std::ranges::all_of(words, belongs)) return {};
    if (const std::size_t at = words.find('@');
        at != std::string_view::npos && words.find('/') == std::string_view::npos)
        return at > 0 && is_host(words.substr(at + 1)) ? "mailto:" + std::string{words} : std::string{};
    for (const std::string_view scheme : {"https://", "http://"}) {
        if (!words.starts_with(scheme)) continue;
        const std::string_view rest = words.substr(scheme.size());
        return is_host(rest.substr(0, rest.find('/'))) ? std::string{words} : std::string{};
    }
    // Without a scheme only what stands in lower case counts: "Merino.Silk" is a name.
    const std::string_view host = words.substr(0, words.find('/'));
    const bool lower = std::ranges::none_of(host, [](char c) { return c >= 'A' && c <= 'Z'; });
    return lower && is_host(host) ? "https://" + std::string{words} : std::string{};
}

} // namespace dyeleaf
