// A value as it stands in a YAML text, and how to write it so that it is read as it was meant.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

namespace dyeleaf {

struct WrittenValue {
    std::size_t offset = 0; // where it begins
    std::string_view key;   // before its colon; empty in a list
    std::string_view text;  // less the remark behind it
};

// The value that holds `offset`: on its line behind the colon, in brackets up to the next comma or closing bracket.
WrittenValue value_at(std::string_view text, std::size_t offset, bool in_brackets);

// `text` in quotes as YAML needs them: "4:1", or 'say "so"'; nothing when it holds too much for either.
std::optional<std::string> in_yaml_quotes(std::string_view text);

// `put the text in quotes: colourway: "Red: the second"`, as far as the line can be shown.
std::string how_to_quote(const WrittenValue& value);
// `close it at the end of its text: name: "Sloe"`, for a value that begins with a quotation mark.
std::string how_to_close(const WrittenValue& value);

// Two numbers with a colon between them: "1 : 4".
bool is_ratio(std::string_view text);

} // namespace dyeleaf
