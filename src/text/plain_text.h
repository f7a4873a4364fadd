// What of a text is for the eye.
#pragma once

#include <string>

namespace dyeleaf {

// The text without control characters, directional marks and other invisible signs that could make it read as what it
// is not; joiners and soft hyphens, which shape words, stay. Tabs become spaces, every kind of line end becomes `\n`,
// blanks at a line's end go, and bytes that are not UTF-8 become U+FFFD.
std::string plain_text(const std::string& text);

// The text without every occurrence of the character.
std::string without(const std::string& text, const std::string& character);

} // namespace dyeleaf
