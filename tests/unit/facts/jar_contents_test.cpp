#include "facts/jar_contents.h"

#include <catch2/catch.hpp>

using namespace dyeleaf;

// A dyer's own figures: 1.5 g of a 20 % mix is 0.30 g of dye; 92 g at 20 % are 18.4 g of dye and do about 60 skeins.
TEST_CASE("what is left in a jar, and what it will do", "[facts]") {
    CHECK(dye_in(grams(1.5), percent(20)).number() == Approx(0.3));
    CHECK(dye_in(grams(92), percent(20)).number() == Approx(18.4));
    CHECK(dye_in(grams(83), percent(50)).number() == Approx(41.5));
    CHECK(skeins_from(grams(92), grams(1.5)) == 61);
    CHECK(skeins_from(grams(4.5), grams(1.5)) == 3);
    CHECK(skeins_from(grams(0.3) * 3, grams(0.3)) == 3);
    CHECK(skeins_from(grams(1.4), grams(1.5)) == 0);
}

// Common practice: from 20 % to 5 % takes three times the jar's contents in salt; the rest is arithmetic.
TEST_CASE("weakening a jar", "[facts]") {
    CHECK(salt_to_weaken(grams(40), percent(20), percent(5)).number() == Approx(120));
    CHECK(salt_to_weaken(grams(40), percent(50), percent(25)).number() == Approx(40));
    CHECK(salt_to_weaken(grams(40), percent(20), percent(20)).number() == Approx(0));
}

// Geometric dilution, as pharmacists mix powders: as much again at every step.
TEST_CASE("a little dye is mixed into much salt by doubling", "[facts]") {
    CHECK(doubling_steps(grams(4), grams(36), grams(0.1)) == std::vector{grams(4), grams(8), grams(16), grams(8)});
    CHECK(doubling_steps(grams(10), grams(10), grams(0.1)) == std::vector{grams(10)});
    CHECK(doubling_steps(grams(10), grams(4), grams(0.1)) == std::vector{grams(4)});
    CHECK(doubling_steps(grams(10), grams(0), grams(0.1)).empty());
    CHECK(doubling_steps(grams(0), grams(10), grams(0.1)).empty());
    const auto crumb = doubling_steps(grams(5), grams(15.05), grams(0.1));
    REQUIRE(crumb.size() == 2);
    CHECK(crumb[1].number() == Approx(10.05));
}
