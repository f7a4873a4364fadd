#include "colour/contrast.h"

#include <catch2/catch.hpp>

using namespace dyeleaf;

namespace {

Rgb hex(const char* text) {
    return parse_hex(text).value();
}

} // namespace

// WCAG 2.2, relative luminance and contrast ratio.
TEST_CASE("contrast follows WCAG", "[colour]") {
    const auto [a, b, ratio] = GENERATE(table<const char*, const char*, double>({{"#000000", "#ffffff", 21.0000},
                                                                                 {"#767676", "#ffffff", 4.5422},
                                                                                 {"#777777", "#ffffff", 4.4781},
                                                                                 {"#595959", "#ffffff", 7.0047},
                                                                                 {"#5a5a5a", "#ffffff", 6.8969},
                                                                                 {"#949494", "#ffffff", 3.0335},
                                                                                 {"#959595", "#ffffff", 2.9953},
                                                                                 {"#ff0000", "#ffffff", 3.9985},
                                                                                 {"#ff0000", "#000000", 5.2520},
                                                                                 {"#00ff00", "#ffffff", 1.3722},
                                                                                 {"#0000ff", "#ffffff", 8.5925},
                                                                                 {"#008000", "#ffffff", 5.1374},
                                                                                 {"#ffff00", "#ffffff", 1.0738},
                                                                                 {"#336699", "#ffffff", 5.9978},
                                                                                 {"#808080", "#ffffff", 3.9494},
                                                                                 {"#808080", "#000000", 5.3172},
                                                                                 {"#800080", "#ffffff", 9.4190}}));
    CHECK(contrast_ratio(hex(a), hex(b)) == Approx(ratio).margin(5e-5));
    CHECK(contrast_ratio(hex(b), hex(a)) == Approx(ratio).margin(5e-5));
}

// Equal contrast with black and white lies at a luminance of 0.1791, between #757575 and #767676.
TEST_CASE("ink on a colour is black or white, whichever stands out", "[colour]") {
    CHECK(black_or_white_on(hex("#757575")) == Rgb{1, 1, 1});
    CHECK(black_or_white_on(hex("#767676")) == Rgb{0, 0, 0});
    CHECK(black_or_white_on(hex("#ffff00")) == Rgb{0, 0, 0});
    CHECK(black_or_white_on(hex("#0000ff")) == Rgb{1, 1, 1});
}
