// Knitting needles; the pairs are those on which conversion charts agree.
#include "facts/needles.h"

#include <catch2/catch.hpp>

using namespace dyeleaf;

TEST_CASE("needles both ways", "[facts]") {
    const auto [diameter, us] = GENERATE(table<double, const char*>({{2, "0"},
                                                                     {2.25, "1"},
                                                                     {2.5, "1.5"},
                                                                     {2.75, "2"},
                                                                     {3, "2.5"},
                                                                     {3.25, "3"},
                                                                     {3.5, "4"},
                                                                     {3.75, "5"},
                                                                     {4, "6"},
                                                                     {4.5, "7"},
                                                                     {5, "8"},
                                                                     {5.5, "9"},
                                                                     {6, "10"},
                                                                     {6.5, "10.5"},
                                                                     {8, "11"},
                                                                     {9, "13"},
                                                                     {10, "15"}}));
    CHECK(us_needle_size(mm(diameter)) == us);
    CHECK(needle_diameter(us) == mm(diameter));
}

// Charts print 12 and 12.75 mm for US 17, 15 and 16 mm for US 19, and so on. What is written in millimetres is sure.
TEST_CASE("US sizes that charts disagree on are not turned into millimetres", "[facts]") {
    const auto [diameter, us] = GENERATE(table<double, const char*>(
        {{1.5, "000"}, {1.75, "00"}, {12.75, "17"}, {15, "19"}, {19, "35"}, {20, "36"}, {25, "50"}}));
    CHECK(us_needle_size(mm(diameter)) == us);
    CHECK_FALSE(needle_diameter(us));
}

TEST_CASE("there is not every size", "[facts]") {
    for (const double diameter : {0.0, 2.6, 7.0, 7.5, 12.0})
        CHECK_FALSE(us_needle_size(mm(diameter)));
    for (const char* us : {"", "12", "3.25", "1-3"})
        CHECK_FALSE(needle_diameter(us));
}

TEST_CASE("needles as dyers write them", "[facts]") {
    const auto [text, least, most] = GENERATE(table<const char*, double, double>({
        {"2.5 mm", 2.5, 2.5},
        {"4mm", 4, 4},
        {"7 mm", 7, 7},
        {"2.25–2.75 mm", 2.25, 2.75},
        {"2.25-2.75 mm", 2.25, 2.75},
        {"2.25 mm – 2.75 mm", 2.25, 2.75},
        {"3 to 3.25 mm", 3, 3.25},
        {"12.75 mm", 12.75, 12.75},
        {"US 1.5", 2.5, 2.5},
        {"us6", 4, 4},
        {"US 1-3", 2.25, 3.25},
        {"US size 8", 5, 5},
        {"US 1 – US 2", 2.25, 2.75},
    }));
    INFO(text);
    const auto sizes = parse_needles(text);
    REQUIRE(sizes);
    CHECK(sizes->least == mm(least));
    CHECK(sizes->most == mm(most));
}

TEST_CASE("other texts are left alone", "[facts]") {
    for (const char* text : {"", "mm", "US", "US mm", "4", "size 4", "UK 8", "2.5 mm circular", "US 19",
                             "2.5 mm (US 1.5)", "3.25–2.75 mm", "your favourite", "2,5 mm", "2.25–2.5–3 mm"}) {
        INFO(text);
        CHECK_FALSE(parse_needles(text));
    }
}
