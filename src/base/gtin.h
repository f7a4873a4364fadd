// Article numbers that stand under bars: 13 digits in an EAN-13, 12 in a UPC-A, the last of them a check digit.
#pragma once

#include <string>
#include <string_view>
#include <variant>

namespace dyeleaf {

enum class Gtin { ean_13, upc_a };

// The check digit of a number without it: weights 3 and 1 in turn from the right, what is missing to a multiple of ten
// (GS1 General Specifications, 7.9; clause from memory). Requires: digits alone.
char gtin_check_digit(std::string_view digits);

struct GtinFault {
    std::string message; // what is wrong, in the dyer's words
    std::string help;    // with the right digit, where one can be told
};

// The digits alone; spaces between them are dropped, as they stand under the bars.
std::variant<std::string, GtinFault> parse_gtin(std::string_view text, Gtin kind);

} // namespace dyeleaf
