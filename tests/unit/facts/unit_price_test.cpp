// Prices by weight; the figures are arithmetic.
#include "facts/unit_price.h"

#include <catch2/catch.hpp>

using namespace dyeleaf;

TEST_CASE("the price of 100 g", "[facts]") {
    const auto [minor, mass, per_hundred] = GENERATE(table<int, double, int>({
        {2200, 100, 2200},        // 22.00
        {600, 20, 3000},          // 6.00 for 20 g: 30.00
        {2400, 115, 2087},        // 24.00 for 115 g: 20.8696
        {2600, 113.398092, 2293}, // 26.00 for 4 oz: 22.928
        {1, 200, 1},              // half a cent: up
        {1, 201, 0},              // less than half a cent
        {3200, 50, 6400},         // in yen
        {1, 8, 13},               // 12.5: up
    }));
    CHECK(price_of_hundred_grams({minor}, grams(mass)).minor == per_hundred);
}

TEST_CASE("the largest price there may be is worked out", "[facts]") {
    // Nine digits before the point and four after it; of 1 g.
    CHECK(price_of_hundred_grams({9'999'999'999'999}, grams(1)).minor == 999'999'999'999'900);
}
