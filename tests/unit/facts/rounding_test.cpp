// The rules of rounding; the figures are arithmetic.
#include "facts/rounding.h"

#include <catch2/catch.hpp>

using namespace dyeleaf;

TEST_CASE("lengths of yarn are rounded down", "[facts]") {
    const auto [exact, stated] = GENERATE(table<double, int>(
        {{437.445, 435}, {435, 435}, {434.99, 430}, {252, 250}, {80, 80}, {50, 50}, {49.99, 49}, {1.2, 1}, {0.9, 0}}));
    CHECK(rounded_length(exact) == stated);
}

TEST_CASE("binary error does not take a step off", "[facts]") {
    for (int tenths = 1; tenths < 10000; ++tenths)
        REQUIRE(rounded_down(tenths / 10.0, 0.1) == Approx(tenths / 10.0));
    CHECK(rounded_down(3.52740, 0.1) == Approx(3.5));
    CHECK(rounded_down(0.29999, 0.1) == Approx(0.2));
}

// A dyer's own example: on a scale of 0.1 g, 0.28 g becomes 0.3 g, 7 % more.
TEST_CASE("masses are rounded to what a scale shows", "[facts]") {
    CHECK(rounded_to(grams(0.28), grams(0.1)).number() == Approx(0.3));
    CHECK(rounded_to(grams(0.28), grams(0.1)) / grams(0.28) == Approx(1.07).margin(0.005));
    CHECK(rounded_to(grams(0.02), grams(0.1)) == grams(0.1));
    CHECK(rounded_to(grams(0.28), grams(0)) == grams(0.28));
}

TEST_CASE("labels are cut to a tenth of a millimetre", "[facts]") {
    CHECK(cuttable(mm(137.26)) == mm(137.3));
    CHECK(cuttable(mm(64.04)) == mm(64));
}

TEST_CASE("money is rounded half up", "[facts]") {
    const auto [dividend, divisor, rounded] = GENERATE(
        table<int, int, int>({{2400'00, 115, 2087}, {5, 2, 3}, {7, 2, 4}, {1, 2, 1}, {1, 3, 0}, {2, 3, 1}, {0, 7, 0}}));
    CHECK(rounded_half_up(dividend, divisor) == rounded);
}

TEST_CASE("stock is measured to whole millilitres, and to tenths below ten", "[facts]") {
    CHECK(measurable(millilitres(365.25)).number() == Approx(365));
    CHECK(measurable(millilitres(7.46)).number() == Approx(7.5));
    CHECK(measurable(millilitres(0.02)).number() == Approx(0.1));
    CHECK(measurable(millilitres(0)).number() == 0);
}
