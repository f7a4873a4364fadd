#include "layout/link_target.h"

#include "base/web_address.h"
#include "base/words.h"

#include <algorithm>

namespace dyeleaf {

std::string link_target(std::string_view text) {
    const std::string_view words = trimmed(text);
    if (words.empty() || !std::ranges::all_of(words, is_address_character)) return {};
    if (const std::size_t at = words.find('@');
        at != std::string_view::npos && words.find('/') == std::string_view::npos)
        return at > 0 && is_host(words.substr(at + 1)) ? "mailto:" + std::string{words} : std::string{};
    if (words.find("://") != std::string_view::npos) return is_web_address(words) ? std::string{words} : std::string{};
    // Without a scheme only what stands in lower case counts: "Merino.Silk" is a name.
    const std::string_view host = words.substr(0, words.find('/'));
    const bool lower = std::ranges::none_of(host, [](char c) { return c >= 'A' && c <= 'Z'; });
    return lower && is_host(host) ? "https://" + std::string{words} : std::string{};
}

} // namespace dyeleaf
