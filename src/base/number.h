// Numbers as text, the same under every locale.
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace dyeleaf {

// "12", "-3.5", ".5"; the whole text must be the number. Not "1e5", "0x10", "inf" or "nan": no dyer writes these.
std::optional<double> parse_decimal(std::string_view text);
std::optional<int> parse_whole(std::string_view text);

// At most `places` decimals, trailing zeros dropped: decimal(2.50, 2) is "2.5". Half rounds away from zero.
std::string decimal(double value, int places);
// Exactly `places` decimals: fixed(2.5, 2) is "2.50".
std::string fixed(double value, int places);
// Rounded to `digits` significant figures and written without an exponent: "0.33", "33", "330".
std::string significant(double value, int digits);

} // namespace dyeleaf
