#include "english.h"
#include "facts/jar_label.h"
#include "facts/stock_solution.h"
#include "facts/wording.h"
#include "facts/yarn_wording.h"
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
    CHECK(stock_volume(grams(fibre), percent(depth), WeightInVolume{percent(stock)}).number() == Approx(volume));
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
    CHECK(label_height({mm(51), mm(51), mm(66)}) == mm(66));
    CHECK(lid_label_diameter(mm(38)) == mm(36));
    CHECK(wrap_overlap() == mm(5));
}

// ISO 3758: washing, bleaching, drying, ironing, professional care.
TEST_CASE("care stands in the order of ISO 3758", "[facts]") {
    CHECK(care_words(english(), in_process_order(full_base().care)) == "Hand\u00a0wash\u00a0· Do\u00a0not\u00a0bleach");
}
