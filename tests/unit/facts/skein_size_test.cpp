// Weights and lengths as tags state them, and what the skeins of a lot hold. Units are exact (international yard and
// pound agreement, 1959); rounding down is common practice.
#include "facts/skein_size.h"

#include "english.h"
#include "facts/put_up.h"
#include "facts/wording.h"

#include <catch2/catch.hpp>

using namespace dyeleaf;

namespace {

Mass oz(double ounces) {
    return grams(28.349523125) * ounces;
}

Length yd(double yards) {
    return metres(0.9144) * yards;
}

SkeinSize metric(Mass mass, Length length) {
    return {{mass, mass, {}}, {length, length, {}}};
}

SkeinSize imperial(double ounces, double yards) {
    return {{oz(ounces), {}, oz(ounces)}, {yd(yards), {}, yd(yards)}};
}

} // namespace

// Exact units of 1959: 400 m = 437.445 yd, 366 m = 400.262 yd, 425 m = 464.786 yd, 800 m = 874.891 yd.
TEST_CASE("lengths are rounded down in either unit", "[facts]") {
    CHECK(stated_yards(metres(400)) == 435);
    CHECK(stated_yards(metres(366)) == 400);
    CHECK(stated_yards(metres(425)) == 460);
    CHECK(stated_yards(metres(800)) == 870);
    CHECK(stated_metres(metres(420)) == 420);
    CHECK(stated_metres(metres(366)) == 365);
    CHECK(stated_metres(metres(49.9)) == 49);
    CHECK(stated_metres(metres(52)) == 50);
    // What was recorded in yards comes back as it was.
    for (int yards = 50; yards <= 1000; yards += 5)
        CHECK(stated_yards(metres(0.9144) * yards) == yards);
}

// 100 g = 3.52740 oz, 115 g = 4.05651 oz, 50 g = 1.76370 oz.
TEST_CASE("ounces are rounded down to a tenth", "[facts]") {
    CHECK(stated_ounces(grams(100)) == Approx(3.5));
    CHECK(stated_ounces(grams(115)) == Approx(4.0));
    CHECK(stated_ounces(grams(50)) == Approx(1.7));
    CHECK(stated_ounces(grams(28.349523125 * 3.5)) == Approx(3.5));
}

TEST_CASE("tags state yarn in the studio's units", "[facts]") {
    const SkeinSize skein = metric(grams(100), metres(420));
    CHECK(put_up_statement(english(), skein, UnitSystem::metric) == "100\u00a0g\u00a0· 420\u00a0m");
    CHECK(put_up_statement(english(), skein, UnitSystem::imperial) == "3.5\u00a0oz\u00a0· 455\u00a0yd");
    CHECK(first_system(Units::imperial) == UnitSystem::imperial);
    CHECK(first_system(Units::both) == UnitSystem::metric);
    CHECK(second_system(Units::both) == UnitSystem::imperial);
    CHECK_FALSE(second_system(Units::metric));
    CHECK_FALSE(second_system(Units::imperial));
}

TEST_CASE("a recorded figure is stated as it was written", "[facts]") {
    const auto [length, stated] = GENERATE(table<double, const char*>({{84, "84\u00a0m"},
                                                                       {366, "366\u00a0m"},
                                                                       {104.5, "104.5\u00a0m"},
                                                                       {12.3, "12.3\u00a0m"},
                                                                       {104.59, "104.5\u00a0m"}}));
    CHECK(length_statement(english(), metric(grams(100), metres(length)), UnitSystem::metric) == stated);
    CHECK(weight_statement(english(), metric(grams(115.5), metres(1)), UnitSystem::metric) == "115.5\u00a0g");
    CHECK(weight_statement(english(), metric(grams(99.96), metres(1)), UnitSystem::metric) == "99.9\u00a0g");
    for (int tenths = 1; tenths <= 20000; ++tenths) {
        const double figure = tenths / 10.0;
        const SkeinSize in_metric = metric(grams(figure), metres(figure));
        const SkeinSize in_imperial = imperial(figure, figure);
        REQUIRE(weight_statement(english(), in_metric, UnitSystem::metric) == mass_words(english(), grams(figure)));
        REQUIRE(length_statement(english(), in_metric, UnitSystem::metric) == metres_words(english(), figure));
        REQUIRE(weight_statement(english(), in_imperial, UnitSystem::imperial) == ounces_words(english(), figure));
        REQUIRE(length_statement(english(), in_imperial, UnitSystem::imperial) == yards_words(english(), figure));
    }
}

// Exact units of 1959: 366 m = 400.26 yd, 84 m = 91.86 yd, 30 m = 32.8 yd; 437 yd = 399.6 m, 4 oz = 113.4 g.
// Rounding down is common practice.
TEST_CASE("a figure worked out from the recorded one is rounded down", "[facts]") {
    CHECK(put_up_statement(english(), metric(grams(100), metres(366)), UnitSystem::imperial) ==
          "3.5\u00a0oz\u00a0· 400\u00a0yd");
    CHECK(length_statement(english(), metric(grams(50), metres(84)), UnitSystem::imperial) == "90\u00a0yd");
    CHECK(length_statement(english(), metric(grams(20), metres(30)), UnitSystem::imperial) == "32\u00a0yd");
    const SkeinSize skein = imperial(4, 437);
    CHECK(put_up_statement(english(), skein, UnitSystem::imperial) == "4\u00a0oz\u00a0· 437\u00a0yd");
    CHECK(put_up_statement(english(), skein, UnitSystem::metric) == "113\u00a0g\u00a0· 395\u00a0m");
}

TEST_CASE("weight and length may be written in different systems", "[facts]") {
    const SkeinSize skein{metric(grams(100), {}).mass, imperial(1, 437).length};
    CHECK(put_up_statement(english(), skein, UnitSystem::metric) == "100\u00a0g\u00a0· 395\u00a0m");
    CHECK(put_up_statement(english(), skein, UnitSystem::imperial) == "3.5\u00a0oz\u00a0· 437\u00a0yd");
}

// 400 m = 437.4 yd, of which 435 would be stated; a mill prints 437.
TEST_CASE("where both are written, both are stated as they stand", "[facts]") {
    const SkeinSize skein{{grams(100), grams(100), oz(3.5)}, {metres(400), metres(400), yd(437)}};
    CHECK(put_up_statement(english(), skein, UnitSystem::metric) == "100\u00a0g\u00a0· 400\u00a0m");
    CHECK(put_up_statement(english(), skein, UnitSystem::imperial) == "3.5\u00a0oz\u00a0· 437\u00a0yd");
}

namespace {

Lot lot_of_minis() {
    Lot lot;
    lot.skeins = 12;
    lot.skein_mass = SkeinFigure<Mass>{grams(20), grams(20), {}};
    lot.odd_skeins = {{7, {grams(63), grams(63), {}}, Price{1600}}, {9, {oz(1), {}, oz(1)}, {}}};
    lot.price = Price{600};
    return lot;
}

Base base_of(SkeinSize skein) {
    Base base;
    base.skein = skein;
    return base;
}

} // namespace

// 63 g of 400 m in 100 g are 252 m or 275.6 yd; 20 g are 80 m or 87.5 yd; 1 oz is 113.4 m or 124.0 yd (arithmetic).
TEST_CASE("a skein of another weight", "[facts]") {
    const Base base = base_of(metric(grams(100), metres(400)));
    const Lot lot = lot_of_minis();
    const auto both = [&](int number) {
        const SkeinSize skein = skein_size(base, lot, number);
        return put_up_statement(english(), skein, UnitSystem::metric) + " = " +
               put_up_statement(english(), skein, UnitSystem::imperial);
    };
    CHECK(both(1) == "20\u00a0g\u00a0· 80\u00a0m = 0.7\u00a0oz\u00a0· 85\u00a0yd");
    CHECK(both(7) == "63\u00a0g\u00a0· 250\u00a0m = 2.2\u00a0oz\u00a0· 275\u00a0yd");
    CHECK(both(9) == "28\u00a0g\u00a0· 110\u00a0m = 1\u00a0oz\u00a0· 120\u00a0yd");
    CHECK(put_up_statement(english(), skein_size(base, lot), UnitSystem::metric) == "20\u00a0g\u00a0· 80\u00a0m");
    CHECK(put_up_statement(english(), skein_size(base, Lot{}), UnitSystem::metric) == "100\u00a0g\u00a0· 400\u00a0m");
}

// 50 g of 115 g to 425 m: 184.8 m; 20 g of 4 oz to 437 yd: 70.5 m.
TEST_CASE("another weight of yarns that are not put up in 100 g", "[facts]") {
    const auto length = [](const SkeinSize& yarn, double mass) {
        return length_statement(english(), skein_of(yarn, {grams(mass), grams(mass), {}}), UnitSystem::metric);
    };
    CHECK(length(metric(grams(115), metres(425)), 50) == "180\u00a0m");
    CHECK(length(imperial(4, 437), 20) == "70\u00a0m");
    // The same weight is the same skein, and its length is stated as it was written.
    CHECK(length(metric(grams(100), metres(366)), 100) == "366\u00a0m");
}

TEST_CASE("an odd skein has its own price or none", "[facts]") {
    const Lot lot = lot_of_minis();
    CHECK(skein_price(lot, 1)->minor == 600);
    CHECK(skein_price(lot, 7)->minor == 1600);
    CHECK_FALSE(skein_price(lot, 9));
}
