#include "facts/dye_bench.h"
#include "facts/pots.h"
#include "facts/stock_solution.h"

#include <catch2/catch.hpp>
#include <numeric>

using namespace dyeleaf;

// 125 g at 2 % and 300 g at 3 % are worked examples of textbooks on dyeing; the rest is arithmetic.
TEST_CASE("depth of shade is dye on dry fibre", "[facts]") {
    const auto [fibre, depth, dye] = GENERATE(table<double, double, double>(
        {{125, 2, 2.5}, {300, 3, 9}, {100, 0.3, 0.3}, {115, 1.5, 1.725}, {1180, 0.2, 2.36}}));
    CHECK(dye_for(grams(fibre), percent(depth)).number() == Approx(dye));
    CHECK(depth_of(grams(dye), grams(fibre)).number() == Approx(depth));
}

// 5 g at 1:10 is a textbook's worked example; the rest is arithmetic.
TEST_CASE("the bath is so many times the fibre", "[facts]") {
    const auto [fibre, ratio, litres] =
        GENERATE(table<double, double, double>({{5, 10, 0.05}, {100, 30, 3}, {100, 40, 4}, {1180, 30, 35.4}}));
    CHECK(bath_for(grams(fibre), {ratio}).number() == Approx(1000 * litres));
}

// Worked from the molar masses 192.123 and 60.052 g/mol: 1 g = 18.75 mL by all three protons.
TEST_CASE("citric acid as vinegar, by all the acid in it", "[facts]") {
    CHECK(vinegar_for(grams(1)).number() == Approx(18.75).margin(0.01));
    CHECK(vinegar_for(grams(35.4)).number() == Approx(663.9).margin(0.2));
}

// By arithmetic: 1 % of 100 g of fibre takes 100 g of a stock with 1 g in 100 g.
TEST_CASE("stocks by weight are weighed", "[facts]") {
    const WeightInWeight stock{percent(1)};
    CHECK(stock_mass(grams(100), percent(1), stock).number() == Approx(100));
    CHECK(stock_mass(grams(487), percent(0.75), stock).number() == Approx(365.25));
}

// Common practice: 10 in fours are 4, 3 and 3, not 4, 4 and 2.
TEST_CASE("skeins are split evenly over pots", "[facts]") {
    CHECK(split_evenly(10, 4) == std::vector{4, 3, 3});
    CHECK(split_evenly(26, 4) == std::vector{4, 4, 4, 4, 4, 3, 3});
    CHECK(split_evenly(12, 4) == std::vector{4, 4, 4});
    CHECK(split_evenly(1, 4) == std::vector{1});
    CHECK(split_evenly(5, 1) == std::vector{1, 1, 1, 1, 1});
    for (int skeins = 1; skeins <= 60; ++skeins) {
        for (int most = 1; most <= 12; ++most) {
            const auto pots = split_evenly(skeins, most);
            REQUIRE(std::accumulate(pots.begin(), pots.end(), 0) == skeins);
            REQUIRE(pots.front() <= most);
            REQUIRE(pots.front() - pots.back() <= 1);
        }
    }
}
