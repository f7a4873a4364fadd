#include "source/explain.h"

#include "base/words.h"
#include "source/lines.h"
#include "source/surroundings.h"
#include "source/written_value.h"

#include <yaml-cpp/exceptions.h>

#include <algorithm>

namespace dyeleaf {

namespace {

std::string shown_trimmed(std::string_view text) {
    return in_quotes(shortened(trimmed(text), 40));
}

// The known key that `words` begin with, behind which no letter of the same word goes on; the longest of them.
std::string_view leading_key(std::string_view words, KnownKeys keys) {
    std::string_view longest;
    for (const std::string_view key : keys) {
        if (key.size() <= longest.size() || lower_case(words.substr(0, key.size())) != key) continue;
        const bool ends = words.size() == key.size() || words[key.size()] == ':' || is_blank(words[key.size()]);
        if (ends) longest = key;
    }
    return longest;
}

// The colon of "name:Sloe" and of "10:63 g"; none in "12:30", "https://…" and texts of several words before it.
std::size_t tight_colon(std::string_view words) {
    const std::size_t colon = words.find(':');
    if (colon == nowhere || colon == 0 || words.substr(colon).starts_with("://")) return nowhere;
    const std::string_view before = words.substr(0, colon);
    const bool has_letter = before.find_first_not_of("0123456789.") != nowhere;
    const bool amount = words.find(' ', colon) != nowhere && words.find_first_of("0123456789", colon) == colon + 1;
    return (has_letter || amount) && before.find(' ') == nowhere ? colon : nowhere;
}

Explanation about_line_without_colon(const Line& line, KnownKeys keys) {
    Explanation why = about_words_without_colon(line.words(), line.start + line.content(), keys);
    if (why.help.empty()) {
        why.help = "after a key come a colon and a space, as in name: Sloe; if this line goes on from the text above, "
                   "indent it further than that text's key";
    }
    return why;
}

// A line that was meant to begin with a key.
bool lacks_colon(const Line& line, KnownKeys keys) {
    const std::string_view words = line.words();
    return colon_of(words) == nowhere && (!leading_key(words, keys).empty() || tight_colon(words) != nowhere);
}

// A text that holds a colon, or one that is meant as a ratio.
Explanation about_text_with_colon(const WrittenValue& value, std::size_t offset, const std::string& message) {
    if (value.key == "parts" && is_ratio(value.text)) {
        return {value.offset, shown_trimmed(value.text) + " does not say which part is the dye",
                "write parts: {dye: 1, salt: 4}, each part by its name", value.text.size()};
    }
    const std::size_t colon = colon_of(value.text);
    const bool of_a_number =
        colon != nowhere && trimmed(value.text.substr(0, colon)).find_first_not_of("0123456789") == nowhere;
    if (of_a_number) {
        return {offset, message,
                "put what belongs together in braces: " + std::string{value.key} + ": {" + shortened(value.text, 40) +
                    "}"};
    }
    return {offset, message, how_to_quote(value)};
}

Explanation about_colon(std::string_view text, std::size_t offset, KnownKeys keys) {
    const Line line = line_at(text, offset);
    if (text.substr(offset).starts_with('?')) return about_first_character(text, offset, false);
    const std::size_t content = line.start + line.content();
    const std::string_view before = text.substr(content, offset - std::min(content, offset));
    if (trimmed(before).empty())
        return {offset, "no key stands before this colon", "write the key first, as in name: Sloe"};
    if (colon_of(before) != nowhere)
        return about_text_with_colon(value_at(text, offset, false), offset, "a second colon on this line");
    const auto above = line_above(text, line);
    const std::string_view words = above ? above->words() : std::string_view{};
    const std::size_t colon = colon_of(words);
    if (colon == nowhere) {
        if (words.size() > 1 && words.front() == '-' && words[1] != '-') {
            return {above->start + above->content(), "a space is missing after the dash",
                    "write - " + std::string{words.substr(1)}};
        }
        return about_line_without_colon(above.value_or(line), keys);
    }
    if (line.is_item()) {
        return {line.start + line.indent(), "a list item stands below a key that has a text already",
                "a dash goes below a key that has nothing after its colon, such as “dyes:”"};
    }
    if (line.content() > above->content()) {
        return {content, "this line is indented further than the one above it",
                "start it in the same column as " + shown_trimmed(words.substr(0, colon)) + " above"};
    }
    return {offset, "a colon stands where none can", how_to_quote({content, {}, line.words()})};
}

// A remark ends a text, so a line without a colon is complained of where the next one begins.
std::optional<Explanation> about_line_above(std::string_view text, const Line& line, KnownKeys keys) {
    const auto above = line_above(text, line);
    if (!above) return std::nullopt;
    const bool same_column = above->content() == line.content() && !above->is_item();
    if (!lacks_colon(*above, keys) && !(same_column && colon_of(above->words()) == nowhere)) return std::nullopt;
    return about_line_without_colon(*above, keys);
}

// A line that begins in no column in which the lines above began.
Explanation about_indentation(std::string_view text, const Line& line, KnownKeys keys) {
    const std::size_t start = line.start + line.indent();
    const auto above = line_above(text, line);
    if (auto why = about_line_above(text, line, keys)) return *why;
    if (lacks_colon(line, keys)) return about_line_without_colon(line, keys);
    if (line.is_item() && above && !above->is_item()) {
        return {start, "a list item stands among keys",
                "a dash goes under the key whose list it belongs to, such as “dyes:”"};
    }
    if (!above) return {start, "this line does not belong here", "start it further left"};
    const std::size_t column = (line.is_item() ? above->indent() : above->content()) + 1;
    return {start,
            "this line begins in column " + std::to_string(line.indent() + 1) + ", where nothing above it begins",
            "lines that belong together begin in the same column: the line above begins in column " +
                std::to_string(column)};
}

Explanation about_misplaced(std::string_view text, std::size_t offset, bool in_brackets, KnownKeys keys) {
    const Line line = line_at(text, offset);
    if (text.substr(offset).starts_with(',')) return {offset, "a comma where none belongs", "take it out"};
    if (offset <= line.start + line.indent()) return about_indentation(text, line, keys);
    const std::string_view before = trimmed(text.substr(line.start, offset - line.start));
    if (before.ends_with('"') || before.ends_with('\'')) {
        return {
            offset, "text goes on after the closing quotation mark",
            "end the text with the mark, or leave both marks out; a mark missing on a line above has the same effect"};
    }
    if (before.ends_with(']') || before.ends_with('}')) {
        const WrittenValue value = value_at(text, line.start + line.content() + line.words().size(), false);
        return {offset, "text goes on after the closing bracket", how_to_quote(value) + ", or take out what follows"};
    }
    if (text.substr(offset).starts_with("- ")) return about_first_character(text, offset, in_brackets);
    return {offset, "this does not belong here", "compare the line with its neighbours: key, colon, space, value"};
}

// Inside [ ] or { }: a comma or the closing bracket is missing, or a text with a colon in it needs quotes.
Explanation about_brackets(std::string_view text, std::size_t offset, std::size_t bracket, KnownKeys keys) {
    const char open = bracket < text.size() ? text[bracket] : '[';
    const std::string close{open == '{' ? '}' : ']'};
    const Line line = line_at(text, offset);
    const bool goes_on = line.start == line_at(text, bracket).start; // on the bracket's own line
    const std::size_t word = offset == 0 ? 0 : text.find_last_of(" {[,\n", offset - 1) + 1;
    const bool has_text_before = goes_on || word > line.start + line.content();
    if (!has_text_before || offset >= text.size() || text[offset] == '\n') {
        return {bracket, std::string{"this "} + open + " is not closed, or a comma is missing after it",
                "write " + close + " where it ends, and a comma between two entries"};
    }
    if (text[offset] == '?') return about_first_character(text, offset, true);
    if (text[offset] != ':') {
        return {offset, "a comma is missing before this, or a " + close + " is",
                open == '{' ? "write {name: rust, halo: 3 mm}, a comma between two entries"
                            : "write [rust, lilac], a comma between two entries"};
    }
    // "2 % base: sock" lacks a comma, "first try: too dark" needs quotes; only known keys tell the one from the other.
    const WrittenValue value = value_at(text, offset, true);
    const auto begins_with_figure = [](std::string_view some) {
        return !some.empty() && some.front() >= '0' && some.front() <= '9';
    };
    const bool amounts = begins_with_figure(value.text) && begins_with_figure(trimmed(text.substr(offset + 1))) &&
                         word > value.offset && word < offset; // "75 % polyamide: 25 %"
    if (amounts || !leading_key(text.substr(word), keys).empty()) {
        const std::string before{trimmed(text.substr(value.offset, word - std::min(word, value.offset)))};
        const std::string_view entry = text.substr(word, text.find_first_of(",]}\n", offset) - word);
        return {word, "a comma is missing before " + shown_trimmed(text.substr(word, offset - word)),
                "write " + shortened(before, 40) + ", " + shortened(entry, 40), offset - word};
    }
    if (value.key.empty()) {
        return {
            word, "a comma is missing before this, or the text needs quotes",
            "write {name: rust, halo: 3 mm}, a comma between two entries; a text that holds a colon goes in quotes"};
    }
    if (!keys.empty()) return about_text_with_colon(value, value.offset, "a text that holds a colon needs quotes");
    Explanation why = about_text_with_colon(value, word, "a comma is missing before this, or the text needs quotes");
    why.help += ", or write a comma between two entries";
    return why;
}

// The reader stops behind the mark that begins a text of several lines.
Explanation about_block(std::string_view text, std::size_t offset) {
    const Line line = line_at(text, offset);
    const std::size_t mark = line.whole.substr(0, offset - line.start).find_last_of("|>");
    return about_first_character(text, mark == nowhere ? offset : line.start + mark, false);
}

bool is_any(std::string_view said, std::initializer_list<std::string_view> known) {
    return std::ranges::any_of(known, [&](std::string_view one) { return said.starts_with(one); });
}

// What the surroundings tell, whatever the reader said.
std::optional<Explanation> about_surroundings(std::string_view text, const Surroundings& around) {
    if (around.remark) return about_remark(text, *around.remark);
    if (!around.quote) return std::nullopt;
    const bool in_brackets = look_around(text, *around.quote).bracket.has_value();
    return Explanation{*around.quote, "this quotation mark is not closed at the end of its text",
                       how_to_close(value_at(text, *around.quote, in_brackets))};
}

} // namespace

Explanation explain(std::string_view text, const ReaderComplaint& complaint, KnownKeys keys) {
    namespace reader = YAML::ErrorMsg;
    const std::size_t offset = complaint.offset;
    const Surroundings around = look_around(text, offset);
    if (auto why = about_surroundings(text, around)) return *why;
    const auto is = [&](auto... known) { return is_any(complaint.said, {known...}); };
    if (is(reader::MAP_VALUE, reader::MAP_KEY)) return about_colon(text, offset, keys);
    if (is(reader::END_OF_MAP_FLOW, reader::END_OF_SEQ_FLOW))
        return about_brackets(text, offset, around.bracket.value_or(offset), keys);
    if (is(reader::END_OF_MAP, reader::END_OF_SEQ, reader::BLOCK_ENTRY))
        return about_misplaced(text, offset, around.bracket.has_value(), keys);
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
        return about_first_character(text, offset, around.bracket.has_value());
    }
    if (is(reader::INVALID_ESCAPE, reader::INVALID_HEX, reader::INVALID_UNICODE)) {
        return {offset, "a backslash stands before something it cannot change",
                R"(use 'single quotes', or write \\ for one backslash)"};
    }
    return {offset, "this cannot be read", "compare the line with one of an example file, character by character"};
}

Explanation about_second_root(std::string_view text, std::size_t offset, KnownKeys keys) {
    if (auto why = about_line_above(text, line_at(text, offset), keys)) return *why;
    return {offset, "this does not belong to what stands above it",
            "begin it in the same column as the keys above, or take it out"};
}

Explanation about_words_without_colon(std::string_view words, std::size_t offset, KnownKeys keys) {
    const std::string_view key = leading_key(words, keys);
    const std::size_t colon = key.empty() || words.substr(key.size()).starts_with(':') ? tight_colon(words) : nowhere;
    const std::size_t key_end = colon != nowhere ? colon : key.size();
    const bool no_space = words.substr(key_end).starts_with(':');
    const std::string_view value = trimmed(words.substr(std::min(words.size(), key_end + (no_space ? 1 : 0))));
    std::string help;
    if (key_end > 0) {
        help = "write " + std::string{words.substr(0, key_end)} + ":" +
               (value.empty() ? std::string{} : " " + shortened(value, 60));
    }
    return {offset, shown_trimmed(words) + (no_space ? " lacks a space after the colon" : " has no colon"), help,
            words.size()};
}

// Some characters mean something to the reader where a text begins, or before a comma in brackets.
Explanation about_first_character(std::string_view text, std::size_t offset, bool in_brackets) {
    const WrittenValue value = value_at(text, offset, in_brackets);
    if (value.text == "?") {
        return {offset, "“?” is no value",
                "leave the line out where you do not know; a date can be written as unknown"};
    }
    const std::string character = shown_trimmed(text.substr(offset, 1));
    return {offset,
            value.offset == offset ? "a text cannot begin with " + character
                                   : "a " + character + " here needs quotes around the text",
            how_to_quote(value)};
}

Explanation about_remark(std::string_view text, std::size_t offset) {
    const std::string_view remark = text.substr(offset, text.find('\n', offset) - offset);
    Explanation why{
        offset, "what follows # is a remark, and takes the rest of the line with it", {}, trimmed(remark).size()};
    if (remark.size() < 2 || is_blank(remark[1])) {
        why.help = "close the bracket before the remark; a text that holds a # goes in quotes";
        return why;
    }
    const WrittenValue value = value_at(text, offset, true);
    const std::string_view digits = value.text.substr(std::min<std::size_t>(1, value.text.size()));
    const bool is_colour = value.offset == offset && digits.find_first_not_of("0123456789abcdefABCDEF") == nowhere;
    why.help = std::string{"put the "} + (is_colour ? "colour" : "text") +
               " in quotes: " + (value.key.empty() ? std::string{} : std::string{value.key} + ": ") +
               in_yaml_quotes(shortened(value.text, 60)).value_or("\"…\"");
    return why;
}

} // namespace dyeleaf
