// Colours as CSS Color 4 and instruments write them.
#include "records/colour_notation.h"

#include "colour/difference.h"
#include "colour/spaces.h"
#include "facts/swatches.h"

#include <catch2/catch.hpp>

using namespace dyeleaf;

namespace {

Lab read(const std::string& text) {
    INFO(text);
    const auto parsed = parse_colour(text);
    REQUIRE(std::holds_alternative<RecordedColour>(parsed));
    return lab_of(std::get<RecordedColour>(parsed));
}

bool is_read(const std::string& text) {
    return std::holds_alternative<RecordedColour>(parse_colour(text));
}

} // namespace

TEST_CASE("one green in every notation", "[records]") {
    // The W3C's tests of CSS Color 4 (web-platform-tests, css/css-color): each shows the same green as #008000.
    const Lab green = to_lab(*parse_hex("#008000"));
    for (const char* text :
         {"lab(46.2775% -47.5621 48.5837)", "lch(46.2775% 67.9892 134.3912)", "oklab(51.975% -0.1403 0.10768)",
          "oklch(51.975% 0.17686 142.495)", "color(display-p3 0.21604 0.49418 0.13151)", "color(srgb 0 0.50196 0)"}) {
        INFO(text);
        CHECK(delta_e_76(read(text), green) < 0.02);
    }
}

TEST_CASE("none, percentages and angles are read as in CSS Color 4", "[records]") {
    CHECK(read("lab(50 none none)") == Lab{50, 0, 0});
    CHECK(read("lab(50% 100% -100%)") == Lab{50, 125, -125});
    CHECK(delta_e_76(read("lch(50% 100% 0)"), {50, 150, 0}) < 1e-9);
    CHECK(delta_e_76(read("oklab(50% 100% -100%)"), read("oklab(0.5 0.4 -0.4)")) < 1e-9);
    CHECK(delta_e_76(read("color(srgb 50% none 100%)"), read("color(srgb 0.5 0 1)")) < 1e-9);
    for (const char* turned : {"lch(50 30 0.25turn)", "lch(50 30 100grad)", "lch(50 30 1.5707963268rad)",
                               "lch(50 30 90°)", "lch(50 30 -270deg)", "LCH( 50  30  450 )"}) {
        INFO(turned);
        CHECK(delta_e_76(read(turned), {50, 0, 30}) < 1e-6);
    }
    CHECK(read("lab(50 10 10 / 1)") == read("lab(50 10 10)"));
    CHECK(read("lab(50 10 10 / 100%)") == read("lab(50 10 10)"));
    CHECK_FALSE(is_read("lab(50 10 10 / 50%)"));
}

TEST_CASE("a colour keeps its place under another light", "[records]") {
    // Black, white and grey look so in every light; D50 for 2° is what lab( ) is without a light (CSS Color 4).
    for (const char* light : {"A", "D50/10", "D55", "D65", "D65/10", "D75", "F2", "F11/10°"}) {
        INFO(light);
        CHECK(delta_e_76(read("lab(50 0 0) under " + std::string{light}), {50, 0, 0}) < 1e-6);
    }
    CHECK(delta_e_76(read("lab(31 12 -24) under D50"), {31, 12, -24}) < 0.01);
    CHECK(delta_e_76(read("lab(31 12 -24) Under d65 / 2"), read("lab(31 12 -24) under D65/2°")) == 0);
    CHECK(delta_e_76(read("lch(50 30 90) under D65"), read("lab(50 0 30) under D65")) < 1e-9);
    // sRGB's own white is D65: blue and red in CIELAB relative to it, computed by the formulae of CIE 15:2004 from the
    // matrix of CSS Color 4, and relative to D50 after Bradford.
    CHECK(delta_e_76(read("lab(32.3009 79.1953 -107.8555) under D65"), to_lab(Rgb{0, 0, 1})) < 0.05);
    CHECK(delta_e_76(read("lab(53.2371 80.0901 67.2033) under D65"), to_lab(Rgb{1, 0, 0})) < 0.05);
}

TEST_CASE("what was written for another notation is refused", "[records]") {
    for (const char* text :
         {"lab(0.31 0.1 -0.2)", "lab(1 0 0)", "oklab(31 12 -24)", "oklch(62% 27 297)", "lch(31 -27 297)",
          "color(srgb 141 127 168)", "color(xyz 0.3 0.3 0.3)", "hsl(260 20% 58%)", "lab(31 12)", "lab(31 12 -24 5)",
          "lab(31 12 -24) under C", "lab(31 12 -24) under D65/4", "oklab(0.4 0 0) under D65", "lab(31 12 -24) D65",
          "lab(31 12deg -24)", "lch(31 27 297%)", "lab(31 12 -24", "31 12 -24", "L*31 a*12 b*-24"}) {
        INFO(text);
        CHECK_FALSE(is_read(text));
    }
    CHECK(is_read("lab(0 0 0)"));
    CHECK(is_read("oklab(1 0 0)"));
}
