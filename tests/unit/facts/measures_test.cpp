#include "english.h"
#include "facts/jar_label.h"
#include "facts/stock_solution.h"
#include "facts/wording.h"
#include "facts/yarn.h"
#include "studio_records.h"

#include <catch2/catch.hpp>

using namespace dyeleaf;

// The first two are worked examples of a textbook recipe page (mL = W × P / C), the third a dyer's guide to depth of
// shade (487 g at 0.75 %: 365 mL), the rest arithmetic.
TEST_CASE("stock volumes", "[facts]") {
    const auto [fibre, depth, stock, volume] =
        GENERATE(table<double, double, double, double>({{5, 2, 0.5, 20},
                                                        {5, 1.5, 1, 7.5},
                                                        {487, 0.75, 1, 365.25},
                                                        {100, 2, 1, 200},
                                                        {100, 0.25, 1, 25},
                                                        {115, 1.5, 2, 86.25},
                                                        {50, 0.1, 0.1, 50},
                                                        {455, 0.75, 1, 341.25}}));
    CHECK(stock_volume(grams(fibre), percent(depth), percent(stock)).number() == Approx(volume));
}

TEST_CASE("stock volumes print whole, and to a tenth below 10 mL", "[facts]") {
    CHECK(volume_words(english(), stock_per_hundred_grams(percent(0.5))) == "50\u00a0mL");
    CHECK(volume_words(english(), millilitres(365.25)) == "365\u00a0mL");
    CHECK(volume_words(english(), millilitres(7.5)) == "7.5\u00a0mL");
    CHECK(volume_words(english(), millilitres(9.96)) == "10\u00a0mL");
    CHECK(volume_words(english(), millilitres(0.04)) == "0.04\u00a0mL");
}

// Common practice: π (D + 0.1 mm) + 5 mm.
TEST_CASE("labels round jars", "[facts]") {
    CHECK(wrap_length(mm(42)) == mm(137.3));
    CHECK(wrap_length(mm(48)) == mm(156.1));
    CHECK(wrap_length(mm(51)) == mm(165.5));
    CHECK(wrap_length(mm(60)) == mm(193.8));
    // 64 mm for a jar of 51 mm, 53 mm for one of 42 mm.
    CHECK(front_width(mm(51)) == mm(64.1));
    CHECK(front_width(mm(42)) == mm(52.8));
    CHECK(give_width(mm(48)) == mm(100.5));
    CHECK(give_width(mm(30)) == mm(74)); // CLP, annex I, table 1.3
    CHECK(label_height(mm(70)) == mm(66));
    CHECK(lid_label_diameter(mm(38)) == mm(36));
    CHECK(wrap_overlap() == mm(5));
}

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
    const Base base = full_base();
    CHECK(put_up_statement(english(), base, UnitSystem::metric) == "100\u00a0g\u00a0· 420\u00a0m");
    CHECK(put_up_statement(english(), base, UnitSystem::imperial) == "3.5\u00a0oz\u00a0· 455\u00a0yd");
    CHECK(first_system(Units::imperial) == UnitSystem::imperial);
    CHECK(first_system(Units::both) == UnitSystem::metric);
    CHECK(second_system(Units::both) == UnitSystem::imperial);
    CHECK_FALSE(second_system(Units::metric));
    CHECK_FALSE(second_system(Units::imperial));
}

// ISO 3758: washing, bleaching, drying, ironing, professional care.
TEST_CASE("care stands in the order of ISO 3758", "[facts]") {
    CHECK(care_words(english(), in_process_order(full_base().care)) == "Hand\u00a0wash\u00a0· Do\u00a0not\u00a0bleach");
}

namespace {

Base skein_of(Mass mass, Length length) {
    Base base = full_base();
    base.skein_mass = mass;
    base.skein_length = length;
    return base;
}

Base imperial_skein_of(double ounces, double yards) {
    Base base = skein_of(grams(28.349523125) * ounces, metres(0.9144) * yards);
    base.mass_in_imperial = base.length_in_imperial = true;
    return base;
}

} // namespace

TEST_CASE("a recorded figure is stated as it was written", "[facts]") {
    const auto [length, stated] = GENERATE(table<double, const char*>({{84, "84\u00a0m"},
                                                                       {366, "366\u00a0m"},
                                                                       {104.5, "104.5\u00a0m"},
                                                                       {12.3, "12.3\u00a0m"},
                                                                       {104.59, "104.5\u00a0m"}}));
    CHECK(length_statement(english(), skein_of(grams(100), metres(length)), UnitSystem::metric) == stated);
    CHECK(weight_statement(english(), skein_of(grams(115.5), metres(1)), UnitSystem::metric) == "115.5\u00a0g");
    CHECK(weight_statement(english(), skein_of(grams(99.96), metres(1)), UnitSystem::metric) == "99.9\u00a0g");
    for (int tenths = 1; tenths <= 20000; ++tenths) {
        const double figure = tenths / 10.0;
        const Base metric = skein_of(grams(figure), metres(figure));
        const Base imperial = imperial_skein_of(figure, figure);
        REQUIRE(weight_statement(english(), metric, UnitSystem::metric) == mass_words(english(), grams(figure)));
        REQUIRE(length_statement(english(), metric, UnitSystem::metric) == metres_words(english(), figure));
        REQUIRE(weight_statement(english(), imperial, UnitSystem::imperial) == ounces_words(english(), figure));
        REQUIRE(length_statement(english(), imperial, UnitSystem::imperial) == yards_words(english(), figure));
    }
}

// Exact units of 1959: 366 m = 400.26 yd, 84 m = 91.86 yd, 30 m = 32.8 yd; 437 yd = 399.6 m, 4 oz = 113.4 g.
// Rounding down is common practice.
TEST_CASE("a figure worked out from the recorded one is rounded down", "[facts]") {
    CHECK(put_up_statement(english(), skein_of(grams(100), metres(366)), UnitSystem::imperial) ==
          "3.5\u00a0oz\u00a0· 400\u00a0yd");
    CHECK(length_statement(english(), skein_of(grams(50), metres(84)), UnitSystem::imperial) == "90\u00a0yd");
    CHECK(length_statement(english(), skein_of(grams(20), metres(30)), UnitSystem::imperial) == "32\u00a0yd");
    const Base imperial = imperial_skein_of(4, 437);
    CHECK(put_up_statement(english(), imperial, UnitSystem::imperial) == "4\u00a0oz\u00a0· 437\u00a0yd");
    CHECK(put_up_statement(english(), imperial, UnitSystem::metric) == "113\u00a0g\u00a0· 395\u00a0m");
}

TEST_CASE("weight and length may be written in different systems", "[facts]") {
    Base base = imperial_skein_of(1, 437);
    base.mass_in_imperial = false;
    base.skein_mass = grams(100);
    CHECK(put_up_statement(english(), base, UnitSystem::metric) == "100\u00a0g\u00a0· 395\u00a0m");
    CHECK(put_up_statement(english(), base, UnitSystem::imperial) == "3.5\u00a0oz\u00a0· 437\u00a0yd");
}
