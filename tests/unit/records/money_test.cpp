// Money in whole minor units.
#include "records/money.h"

#include <algorithm>
#include <catch2/catch.hpp>

using namespace dyeleaf;

TEST_CASE("currencies have the minor units of ISO 4217", "[records]") {
    // SIX, list one.
    for (const char* code : {"EUR", "USD", "GBP", "CAD", "AUD", "NZD", "CHF", "SEK", "NOK", "DKK", "HUF"})
        CHECK(find_currency(code)->minor_units == 2);
    for (const char* code : {"BIF", "CLP", "DJF", "GNF", "ISK", "JPY", "KMF", "KRW", "PYG", "RWF", "UGX", "UYI", "VND",
                             "VUV", "XAF", "XOF", "XPF"})
        CHECK(find_currency(code)->minor_units == 0);
    for (const char* code : {"BHD", "IQD", "JOD", "KWD", "LYD", "OMR", "TND"})
        CHECK(find_currency(code)->minor_units == 3);
    for (const char* code : {"CLF", "UYW"})
        CHECK(find_currency(code)->minor_units == 4);
    // Withdrawn by 2025: ANG, HRK, SLL, ZWL. Without minor units: XAU, XXX. The rest is none.
    for (const char* code :
         {"", "eur", "EURO", "€", "UK", "ANG", "HRK", "SLL", "ZWL", "XAU", "XXX", "D A", " EU", "ED "})
        CHECK_FALSE(find_currency(code));
}

// SIX, list one, with the funds codes and without the metals and units of account: 165 in 2025.
TEST_CASE("every active currency is known", "[records]") {
    const auto codes = currency_codes();
    CHECK(codes.size() == 165);
    CHECK(std::ranges::is_sorted(codes));
    CHECK(std::ranges::adjacent_find(codes) == codes.end());
    for (const std::string& code : codes) {
        INFO(code);
        REQUIRE(find_currency(code));
        CHECK(find_currency(code)->code == code);
    }
}

TEST_CASE("no price is a rounded binary fraction", "[records]") {
    const Currency euro{"EUR", 2};
    CHECK(parse_price("26", euro)->minor == 2600);
    CHECK(parse_price("26.5", euro)->minor == 2650);
    CHECK(parse_price("26.00", euro)->minor == 2600);
    CHECK(parse_price("0.29", euro)->minor == 29);
    CHECK(parse_price("1250", {"JPY", 0})->minor == 1250);
    CHECK(parse_price("1.005", {"KWD", 3})->minor == 1005);
}

TEST_CASE("other texts are no prices", "[records]") {
    const Currency euro{"EUR", 2};
    for (const char* text : {"", ".", "26.", ".50", "26.005", "-1", "+1", "1,250", "26,00", "1e3", "26 EUR", "free",
                             "999999999999999999999"}) {
        INFO(text);
        CHECK_FALSE(parse_price(text, euro));
    }
    CHECK_FALSE(parse_price("26.0", {"JPY", 0}));
}
