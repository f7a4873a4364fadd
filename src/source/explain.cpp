#include "source/explain.h"

#include "base/words.h"

#include <yaml-cpp/exceptions.h>

#include <algorithm>

namespace dyeleaf {

namespace {

constexpr std::size_t none = std::string_view::npos;

// One line of a text, less its comment lines' look-alikes: where it starts and what stands on it.
struct Line {
    std::size_t start = 0;
    std::string_view whole;

    [[nodiscard]] std::size_t indent() const { return std::min(whole.find_first_not_of(' '), whole.size()); }
    // Where the first word stands, behind the dashes of list items.
    [[nodiscard]] std::size_t content() const {
        std::size_t at = indent();
        while (whole.substr(at).starts_with("- "))
            at = std::min(whole.find_first_not_of(' ', at + 1), whole.size());
        return at;
    }
    [[nodiscard]] std::string_view words() const { return trimmed(whole.substr(content())); }
    [[nodiscard]] bool is_blank() const { return words().empty() || words().front() == '#'; }
};

Line line_at(std::string_view text, std::size_t offset) {
    offset = std::min(offset, text.size());
    const std::size_t before = offset == 0 ? none : text.rfind('\n', offset - 1);
    const std::size_t start = before == none ? 0 : before + 1;
    return {start, text.substr(start, text.find('\n', start) - start)};
}

std::optional<Line> line_above(std::string_view text, const Line& line) {
    for (Line above = line; above.start > 0;) {
        above = line_at(text, above.start - 1);
        if (!above.is_blank()) return above;
    }
    return std::nullopt;
}

// Where a key ends in `words`: at a colon before a space or the end of the line.
std::size_t colon_of(std::string_view words) {
    for (std::size_t at = words.find(':'); at != none; at = words.find(':', at + 1)) {
        if (at + 1 == words.size() || words[at + 1] == ' ') return at;
    }
    return none;
}

std::string shown(std::string_view text) {
    return in_quotes(shortened(trimmed(text), 40));
}

// "put it in quotes", with the line as it should read where that can be shown.
std::string quote_it(std::string_view key, std::string_view value) {
    const auto quoted = in_yaml_quotes(trimmed(value));
    if (!quoted || value.size() > 60) return "put the text in quotes";
    return "put the text in quotes: " + (key.empty() ? std::string{} : std::string{trimmed(key)} + " ") + *quoted;
}

// The line from its first word up to `offset`, which begins the value at fault.
std::string_view key_before(const Line& line, std::size_t offset) {
    return line.whole.substr(line.content(), offset - line.start - std::min(line.content(), offset - line.start));
}

Explanation about_second_colon(const Line& line, std::size_t offset) {
    const std::string_view words = line.words();
    const std::size_t colon = colon_of(words);
    return {offset, "a second colon on this line", quote_it(words.substr(0, colon + 1), words.substr(colon + 1))};
}

// A line without a key, which the reader took for more of the text above or for the start of a key.
Explanation about_missing_colon(const Line& line) {
    const std::string_view words = line.words();
    const std::size_t start = line.start + line.content();
    const std::size_t colon = words.find(':');
    if (words.size() > 1 && words.front() == '-' && words[1] != '-') {
        return {start, "a space is missing after the dash", "write - " + std::string{words.substr(1)}};
    }
    if (colon != none && colon > 0) {
        const std::string fixed =
            std::string{words.substr(0, colon + 1)} + " " + std::string{trimmed(words.substr(colon + 1))};
        return {start + colon, "a space is missing after the colon", "write " + shortened(fixed, 60)};
    }
    return {
        start, shown(words) + " has no colon",
        "after a key come a colon and a space, as in name: Sloe; if this line goes on from the text above, indent it "
        "further than that text's key"};
}

Explanation about_colon(std::string_view text, std::size_t offset) {
    const Line line = line_at(text, offset);
    const std::string_view before = key_before(line, offset);
    if (trimmed(before).empty())
        return {offset, "no key stands before this colon", "write the key first, as in name: Sloe"};
    if (colon_of(before) != none) return about_second_colon(line, offset);
    const auto above = line_above(text, line);
    const std::size_t colon = above ? colon_of(above->words()) : none;
    if (colon == none) return about_missing_colon(above.value_or(line));
    if (line.whole.substr(line.indent()).starts_with("- ")) {
        return {line.start + line.indent(), "a list item stands below a key that has a text already",
                "a dash goes below a key that has nothing after its colon, such as “dyes:”"};
    }
    if (line.content() > above->content()) {
        return {line.start + line.content(), "this line is indented further than the one above it",
                "start it in the same column as " + shown(above->words().substr(0, colon)) + " above"};
    }
    return {offset, "a colon stands where none can", quote_it({}, line.words())};
}

// A line that begins in no column in which the lines above began.
Explanation about_indentation(std::string_view text, const Line& line) {
    const std::size_t start = line.start + line.indent();
    const auto above = line_above(text, line);
    const bool dash = line.whole.substr(line.indent()).starts_with("- ");
    const bool dash_above = above && above->whole.substr(above->indent()).starts_with("- ");
    if (dash && !dash_above) {
        return {start, "a list item stands among keys",
                "a dash goes under the key whose list it belongs to, such as “dyes:”"};
    }
    if (!above) return {start, "this line does not belong here", "start it further left"};
    const std::size_t column = (dash ? above->indent() : above->content()) + 1;
    return {start,
            "this line begins in column " + std::to_string(line.indent() + 1) + ", where nothing above it begins",
            "lines that belong together begin in the same column: the line above begins in column " +
                std::to_string(column)};
}

Explanation about_misplaced(std::string_view text, std::size_t offset) {
    const Line line = line_at(text, offset);
    if (text.substr(offset).starts_with(',')) return {offset, "a comma where none belongs", "take it out"};
    if (offset <= line.start + line.indent()) return about_indentation(text, line);
    const std::string_view before = trimmed(text.substr(line.start, offset - line.start));
    if (before.ends_with('"') || before.ends_with('\'')) {
        return {
            offset, "text goes on after the closing quotation mark",
            "end the text with the mark, or leave both marks out; a mark missing on a line above has the same effect"};
    }
    if (before.ends_with(']') || before.ends_with('}')) {
        return {offset, "text goes on after the closing bracket",
                "put the whole text in quotes, or take out what follows"};
    }
    return {offset, "this does not belong here", "compare the line with its neighbours: key, colon, space, value"};
}

// Inside [ ] or { }: a comma or the closing bracket is missing, or a # has made the rest of a line a remark.
Explanation about_brackets(std::string_view text, std::size_t offset, std::size_t bracket) {
    const std::string_view inside = text.substr(bracket, offset - std::min(offset, bracket));
    for (std::size_t at = inside.find(" #"); at != none; at = inside.find(" #", at + 1)) {
        const std::string_view remark = first_word(inside.substr(at + 1));
        if (remark.size() < 2) continue;
        const auto quoted = in_yaml_quotes(remark);
        return {bracket + at + 1, "everything after this # is taken for a remark",
                "put the value in quotes: " + quoted.value_or("\"#8d7fa8\"")};
    }
    const char open = bracket < text.size() ? text[bracket] : '[';
    const std::string close{open == '{' ? '}' : ']'};
    if (line_at(text, offset).start == line_at(text, bracket).start && offset < text.size() && text[offset] != '\n') {
        if (text[offset] == ':') {
            const std::size_t word = text.find_last_of(" {[,", offset - 1) + 1;
            return {word, "a comma is missing before this, or the text needs quotes",
                    "write {name: rust, halo: 3 mm}, a comma between two entries; a text that holds a colon goes in "
                    "quotes"};
        }
        return {offset, "a comma is missing before this, or a " + close + " is",
                open == '{' ? "write {name: rust, halo: 3 mm}, a comma between two entries"
                            : "write [rust, lilac], a comma between two entries"};
    }
    return {bracket, std::string{"this "} + open + " is not closed, or a comma is missing after it",
            "write " + close + " where it ends, and a comma between two entries"};
}

// The value that holds `offset`: on its line, behind the colon, bracket or comma before it.
std::string_view value_around(std::string_view text, std::size_t offset, bool in_brackets) {
    const Line line = line_at(text, offset);
    std::size_t begin = line.start + line.content();
    for (std::size_t at = begin; at < offset; ++at) {
        const bool ends_key = text.substr(at).starts_with(": ");
        if (ends_key || (in_brackets && std::string_view{"[{,"}.find(text[at]) != none)) begin = at + 1;
    }
    const std::string_view rest = line.whole.substr(begin - line.start);
    const std::string_view value = in_brackets ? rest.substr(0, rest.find_first_of(",]}")) : rest;
    return trimmed(value);
}

// Some characters mean something to the reader where a text begins, or before a comma in brackets.
Explanation about_character(std::string_view text, std::size_t offset, bool in_brackets) {
    const std::string_view value = value_around(text, offset, in_brackets);
    const std::size_t begin = value.empty() ? offset : static_cast<std::size_t>(value.data() - text.data());
    const std::string character = shown(text.substr(offset, 1));
    const std::string_view key = in_brackets ? std::string_view{} : key_before(line_at(text, offset), begin);
    return {offset,
            begin == offset ? "a text cannot begin with " + character
                            : "a " + character + " here needs quotes around the text",
            quote_it(key, value)};
}

// The reader stops behind the mark that begins a text of several lines.
Explanation about_block(std::string_view text, std::size_t offset) {
    const Line line = line_at(text, offset);
    const std::size_t mark = line.whole.substr(0, offset - line.start).find_last_of("|>");
    return about_character(text, mark == none ? offset : line.start + mark, false);
}

bool is_any(std::string_view said, std::initializer_list<std::string_view> known) {
    return std::ranges::any_of(known, [&](std::string_view one) { return said.starts_with(one); });
}

} // namespace

Explanation explain(std::string_view text, const ReaderComplaint& complaint) {
    namespace reader = YAML::ErrorMsg;
    const std::size_t offset = complaint.offset;
    const auto is = [&](auto... known) { return is_any(complaint.said, {known...}); };
    if (is(reader::MAP_VALUE, reader::MAP_KEY)) return about_colon(text, offset);
    if (is(reader::END_OF_MAP_FLOW, reader::END_OF_SEQ_FLOW))
        return about_brackets(text, offset, complaint.bracket.value_or(offset));
    if (is(reader::END_OF_MAP, reader::END_OF_SEQ, reader::BLOCK_ENTRY)) return about_misplaced(text, offset);
    if (is(reader::FLOW_END)) {
        return {offset, "a closing bracket that fits no opening one",
                "[ is closed by ] and { by }; a text that holds brackets needs quotes"};
    }
    if (is(reader::EOF_IN_SCALAR, reader::DOC_IN_SCALAR)) {
        return {offset, "a quotation mark above is never closed", "close it at the end of its text"};
    }
    if (is(reader::CHAR_IN_BLOCK)) return about_block(text, offset);
    if (is(reader::UNKNOWN_TOKEN, reader::CHAR_IN_ALIAS, reader::CHAR_IN_ANCHOR, reader::ALIAS_NOT_FOUND,
           reader::ANCHOR_NOT_FOUND, reader::UNKNOWN_ANCHOR, reader::CHAR_IN_TAG_HANDLE, reader::TAG_WITH_NO_SUFFIX,
           reader::END_OF_VERBATIM_TAG, reader::MULTIPLE_TAGS, reader::MULTIPLE_ANCHORS, reader::ALIAS_CONTENT)) {
        return about_character(text, offset, complaint.bracket.has_value());
    }
    if (is(reader::INVALID_ESCAPE, reader::INVALID_HEX, reader::INVALID_UNICODE)) {
        return {offset, "a backslash stands before something it cannot change",
                R"(use 'single quotes', or write \\ for one backslash)"};
    }
    return {offset, "this cannot be read", "compare the line with one of an example file, character by character"};
}

std::optional<std::string> in_yaml_quotes(std::string_view text) {
    if (text.find_first_of("\"\\") == none) return "\"" + std::string{text} + "\"";
    if (text.find('\'') == none) return "'" + std::string{text} + "'";
    return std::nullopt;
}

std::string_view first_word(std::string_view text) {
    return text.substr(0, text.find_first_of(" \t\r\n,}]"));
}

} // namespace dyeleaf
