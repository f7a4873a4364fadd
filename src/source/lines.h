// The lines of a YAML text, as their writer sees them.
#pragma once

#include <cstddef>
#include <optional>
#include <string_view>

namespace dyeleaf {

inline constexpr std::size_t nowhere = std::string_view::npos;

// One line: where it starts in its text, and what stands on it.
struct Line {
    std::size_t start = 0;
    std::string_view whole;

    [[nodiscard]] std::size_t indent() const;
    // Where the first word stands, behind the dashes of list items.
    [[nodiscard]] std::size_t content() const;
    // From the first word on, less the remark.
    [[nodiscard]] std::string_view words() const;
    [[nodiscard]] bool is_item() const { return content() > indent(); }
};

Line line_at(std::string_view text, std::size_t offset);
// The nearest line above that holds more than blanks or a remark.
std::optional<Line> line_above(std::string_view text, const Line& line);

// Where a key ends in `words`: at a colon before a blank or the end; or nowhere.
std::size_t colon_of(std::string_view words);
// Where the remark begins on a line: at a # behind a blank, outside quotes; or nowhere.
std::size_t remark_of(std::string_view line);
// The mark that closes the text in quotes that begins at `begin`, or nowhere.
std::size_t closing_mark(std::string_view text, std::size_t begin);

// A word that ends where the reader would end it.
std::string_view first_word(std::string_view text);

constexpr bool is_blank(char c) {
    return c == ' ' || c == '\t' || c == '\r' || c == '\n';
}
// What begins and ends a text in quotes.
constexpr bool is_quotation_mark(char c) {
    return c == '"' || c == '\'';
}

} // namespace dyeleaf
