#include "base/controls.h"

#include "base/words.h"

#include <algorithm>
#include <array>

namespace dyeleaf {

namespace {

// U+061C; U+200E, U+200F; U+202A to U+202E; U+2066 to U+2069.
bool turns_text(std::string_view text) {
    constexpr std::array<std::string_view, 12> marks = {
        "\u061C", "\u200E", "\u200F", "\u202A", "\u202B", "\u202C",
        "\u202D", "\u202E", "\u2066", "\u2067", "\u2068", "\u2069",
    };
    return std::ranges::any_of(marks, [&](std::string_view mark) { return text.starts_with(mark); });
}

// Bytes of the control that `text` begins with, or 0.
std::size_t control_bytes(std::string_view text) {
    const auto byte = static_cast<unsigned char>(text.front());
    if (byte == '\t' || byte == '\n' || byte == '\r') return 0;
    if (byte <= 0x7F) return byte < 0x20 || byte == 0x7F ? 1 : 0;
    const auto next = text.size() > 1 ? static_cast<unsigned char>(text[1]) : 0U;
    if (byte == 0xC2 && next < 0xA0) return 2; // U+0080 to U+009F
    if (text.starts_with("\uFEFF")) return 3;
    return turns_text(text) ? (byte == 0xD8 ? 2 : 3) : 0;
}

} // namespace

std::optional<Control> find_control(std::string_view text) {
    for (std::size_t at = 0; at < text.size(); ++at) {
        const std::string_view rest = text.substr(at);
        if (const std::size_t bytes = control_bytes(rest); bytes > 0) return Control{at, bytes, turns_text(rest)};
    }
    return std::nullopt;
}

std::string with_controls_shown(std::string_view text) {
    std::string sound;
    for (std::size_t at = invalid_utf8(text); at != std::string_view::npos; at = invalid_utf8(text)) {
        sound.append(text.substr(0, at)).append(".");
        text.remove_prefix(at + 1);
    }
    sound.append(text);
    std::string result;
    text = sound;
    while (const auto control = find_control(text)) {
        result.append(text.substr(0, control->at)).append(".");
        text.remove_prefix(control->at + control->bytes);
    }
    result.append(text);
    std::ranges::replace(result, '\t', ' ');
    std::ranges::replace_if(
        result, [](char c) { return c == '\n' || c == '\r'; }, '.');
    return result;
}

} // namespace dyeleaf
