// Small helpers on text.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace dyeleaf {

std::string_view trimmed(std::string_view text);
// ASCII letters only; other characters stay as they are.
std::string lower_case(std::string_view text);
bool same_but_for_case(std::string_view a, std::string_view b);
std::string joined(const std::vector<std::string>& parts, std::string_view between);
// Adds a text that is neither empty nor there already.
void add_once(std::vector<std::string>& texts, const std::string& text);
// In the quotation marks that messages use, on one line: “text”.
std::string in_quotes(std::string_view text);
// "1 sheet", "3 sheets".
std::string counted(int count, std::string_view one, std::string_view many);

// Where the first byte stands that is not valid UTF-8, or npos.
std::size_t invalid_utf8(std::string_view text);
// Unicode code points in valid UTF-8.
int code_points(std::string_view text);
// A long text cut for a message, at a character's edge.
std::string shortened(std::string_view text, int most);

} // namespace dyeleaf
