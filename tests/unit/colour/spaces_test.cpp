#include "colour/spaces.h"

#include "colour/xyz.h"

#include <catch2/catch.hpp>

using namespace dyeleaf;

namespace {

Rgb hex(const char* text) {
    return parse_hex(text).value();
}

} // namespace

// IEC 61966-2-1, the transfer curve at eight-bit values.
TEST_CASE("sRGB channels are decoded to light and coded again", "[colour]") {
    const auto [byte, linear] = GENERATE(table<int, double>({{0, 0},
                                                             {1, 0.00030353},
                                                             {10, 0.00303527},
                                                             {11, 0.00334654},
                                                             {64, 0.05126946},
                                                             {128, 0.21586050},
                                                             {188, 0.50288646},
                                                             {200, 0.57758044},
                                                             {255, 1}}));
    CHECK(decoded(byte / 255.0) == Approx(linear).margin(5e-9));
    CHECK(coded(decoded(byte / 255.0)) == Approx(byte / 255.0).margin(1e-7));
}

// CSS Color 4: sRGB to lab(), Bradford to D50.
TEST_CASE("sRGB becomes CIELAB relative to D50", "[colour]") {
    struct Row {
        const char* rgb;
        Lab lab;
    };
    const auto row = GENERATE(values<Row>({{"#ffffff", {100, 0, 0}},
                                           {"#000000", {0, 0, 0}},
                                           {"#ff0000", {54.2905, 80.8049, 69.8910}},
                                           {"#00ff00", {87.8185, -79.2711, 80.9946}},
                                           {"#0000ff", {29.5683, 68.2874, -112.0297}},
                                           {"#00ffff", {90.6660, -50.6565, -14.9617}},
                                           {"#ff00ff", {60.1689, 93.5396, -60.5008}},
                                           {"#ffff00", {97.6070, -15.7498, 93.3936}},
                                           {"#808080", {53.5850, 0, 0}},
                                           {"#777777", {50.0344, 0, 0}},
                                           {"#336699", {41.5208, -4.5731, -33.4942}},
                                           {"#8b4513", {37.9323, 28.0752, 41.5661}}}));
    const Lab lab = to_lab(hex(row.rgb));
    CHECK(lab.lightness == Approx(row.lab.lightness).margin(1e-4));
    CHECK(lab.a == Approx(row.lab.a).margin(1e-4));
    CHECK(lab.b == Approx(row.lab.b).margin(1e-4));
    const RgbResult back = to_rgb(row.lab);
    CHECK(to_hex(back.colour) == row.rgb);
    CHECK(back.in_gamut);
}

TEST_CASE("a colour stronger than sRGB is clipped and says so", "[colour]") {
    const RgbResult strong = to_rgb({50, -100, 0});
    CHECK_FALSE(strong.in_gamut);
    CHECK(strong.colour.red == 0);
    CHECK(to_rgb({44, 18, 30}).in_gamut);
    CHECK_FALSE(to_rgb({110, 0, 0}).in_gamut);
}
