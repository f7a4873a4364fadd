#include "source/written_value.h"

#include "base/words.h"
#include "source/lines.h"

#include <algorithm>

namespace dyeleaf {

namespace {

// What follows this # is no part of the value; behind "Red #4" that is not sure.
bool surely_begins_remark(std::string_view text, std::size_t at) {
    const bool behind_blank = at == 0 || is_blank(text[at - 1]);
    return behind_blank && (at + 1 >= text.size() || is_blank(text[at + 1]) || text[at + 1] == '#');
}

std::string_view less_remark(std::string_view text) {
    for (std::size_t at = text.find('#'); at != nowhere; at = text.find('#', at + 1)) {
        if (surely_begins_remark(text, at)) return trimmed(text.substr(0, at));
    }
    return trimmed(text);
}

// The value in quotes behind its key; nothing where it is long, or may hold a remark.
std::optional<std::string> quoted_line(std::string_view key, std::string_view value) {
    const auto quoted = in_yaml_quotes(value);
    if (!quoted || value.empty() || value.size() > 60 || value.find(" #") != nowhere) return std::nullopt;
    return (key.empty() ? std::string{} : std::string{key} + ": ") + *quoted;
}

} // namespace

WrittenValue value_at(std::string_view text, std::size_t offset, bool in_brackets) {
    const Line line = line_at(text, offset);
    const std::size_t here = offset - line.start;
    std::size_t begin = std::min(line.content(), here);
    if (in_brackets) {
        const std::size_t opening = line.whole.substr(0, here).find_last_of("[{,");
        if (opening != nowhere && opening >= begin) begin = opening + 1;
    }
    const std::string_view entry = line.whole.substr(begin);
    const std::size_t colon = colon_of(entry);
    WrittenValue value;
    if (colon != nowhere && begin + colon < here) {
        value.key = trimmed(entry.substr(0, colon));
        begin += colon + 1;
    }
    const std::string_view rest = line.whole.substr(begin);
    const std::size_t end = in_brackets ? rest.find_first_of(",]}", here - begin) : nowhere;
    value.text = less_remark(rest.substr(0, end));
    value.offset = value.text.empty() ? offset : static_cast<std::size_t>(value.text.data() - text.data());
    return value;
}

std::optional<std::string> in_yaml_quotes(std::string_view text) {
    if (text.find_first_of("\"\\") == nowhere) return "\"" + std::string{text} + "\"";
    if (text.find('\'') == nowhere) return "'" + std::string{text} + "'";
    return std::nullopt;
}

std::string how_to_quote(const WrittenValue& value) {
    const auto line = quoted_line(value.key, value.text);
    return "put the text in quotes" + (line ? ": " + *line : std::string{});
}

std::string how_to_close(const WrittenValue& value) {
    const std::string help = "close it at the end of its text";
    const std::string_view inside = trimmed(value.text.substr(std::min<std::size_t>(1, value.text.size())));
    const auto line = quoted_line(value.key, inside);
    return help + (line ? ": " + *line : std::string{});
}

bool is_ratio(std::string_view text) {
    const std::size_t colon = text.find(':');
    const auto is_number = [](std::string_view part) {
        return !part.empty() && part.find_first_not_of("0123456789.") == nowhere;
    };
    return colon != nowhere && is_number(trimmed(text.substr(0, colon))) && is_number(trimmed(text.substr(colon + 1)));
}

} // namespace dyeleaf
