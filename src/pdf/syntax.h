// Numbers, names and texts as a PDF writes them (ISO 32000-1, 7.3).
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace dyeleaf {

// Without an exponent, without zeros at the end and without one before the point: "-.25". Values beyond what a page
// can hold come out as its bounds. Requires: decimals from 0 to 6.
void append_number(std::string& text, double value, int decimals);

// A text for people: "(Sloe)", or UTF-16 where it is not ASCII (7.9.2.2).
std::string text_string(std::string_view utf8);
// Bytes in round brackets, what would end them escaped.
std::string byte_string(std::string_view bytes);
// "12 0 R".
std::string reference(int object);
// UTF-16 in capital hexadecimal digits, without a mark in front.
std::string utf16_digits(std::string_view utf8);

} // namespace dyeleaf
