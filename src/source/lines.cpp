#include "source/lines.h"

#include "base/words.h"

#include <algorithm>

namespace dyeleaf {

namespace {

bool blank_or_end(std::string_view text, std::size_t at) {
    return at >= text.size() || is_blank(text[at]);
}

} // namespace

std::size_t Line::indent() const {
    return std::min(whole.find_first_not_of(' '), whole.size());
}

std::size_t Line::content() const {
    std::size_t at = indent();
    while (whole.substr(at).starts_with("- "))
        at = std::min(whole.find_first_not_of(' ', at + 1), whole.size());
    return at;
}

std::string_view Line::words() const {
    const std::size_t begin = content();
    return trimmed(whole.substr(begin, std::max(begin, std::min(remark_of(whole), whole.size())) - begin));
}

Line line_at(std::string_view text, std::size_t offset) {
    offset = std::min(offset, text.size());
    const std::size_t before = offset == 0 ? nowhere : text.rfind('\n', offset - 1);
    const std::size_t start = before == nowhere ? 0 : before + 1;
    return {start, text.substr(start, text.find('\n', start) - start)};
}

std::optional<Line> line_above(std::string_view text, const Line& line) {
    for (Line above = line; above.start > 0;) {
        above = line_at(text, above.start - 1);
        if (!above.words().empty()) return above;
    }
    return std::nullopt;
}

std::size_t colon_of(std::string_view words) {
    for (std::size_t at = words.find(':'); at != nowhere; at = words.find(':', at + 1)) {
        if (blank_or_end(words, at + 1)) return at;
    }
    return nowhere;
}

std::size_t remark_of(std::string_view line) {
    bool may_begin = true; // a text, and so a quotation mark
    for (std::size_t at = 0; at < line.size(); ++at) {
        const char c = line[at];
        if (is_blank(c)) continue;
        if (c == '#' && (at == 0 || is_blank(line[at - 1]))) return at;
        if (may_begin && is_quotation_mark(c)) {
            at = closing_mark(line, at);
            if (at == nowhere) return nowhere;
            may_begin = false;
            continue;
        }
        const bool opens = c == '[' || c == '{' || c == ',';
        may_begin = opens || ((c == ':' || c == '-') && blank_or_end(line, at + 1));
    }
    return nowhere;
}

std::size_t closing_mark(std::string_view text, std::size_t begin) {
    const char mark = text[begin];
    for (std::size_t at = begin + 1; at < text.size(); ++at) {
        const bool escapes = mark == '"' ? text[at] == '\\' : text.substr(at).starts_with("''");
        if (escapes) {
            ++at;
        } else if (text[at] == mark) {
            return at;
        }
    }
    return nowhere;
}

std::string_view first_word(std::string_view text) {
    return text.substr(0, text.find_first_of(" \t\r\n,}]"));
}

} // namespace dyeleaf
