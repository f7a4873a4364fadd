// Money in whole minor units, so that no price is ever a rounded binary fraction.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace dyeleaf {

struct Currency {
    std::string code;    // ISO 4217: "EUR"; empty: not recorded
    int minor_units = 2; // decimals of the currency
};

struct Price {
    std::int64_t minor = 0; // cents of EUR, yen of JPY
};

// Nothing for codes that are not active ones of ISO 4217, which gives the minor units too.
std::optional<Currency> find_currency(std::string_view code);
// Every active code, in alphabetical order.
std::vector<std::string> currency_codes();

// "26", "26.00", "1250": digits with at most the currency's decimals, not negative.
std::optional<Price> parse_price(std::string_view text, const Currency& currency);

} // namespace dyeleaf
