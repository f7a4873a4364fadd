// Which way one colour lies of another, in the words of textile colour control (common practice).
#include "colour/leaning.h"

#include <catch2/catch.hpp>

using namespace dyeleaf;

TEST_CASE("what is less than a unit is not told", "[colour]") {
    const Leaning none = leaning({50, 20, 0}, {50.9, 20.9, 0.5});
    CHECK(none.lightness == 0);
    CHECK(none.strength == 0);
    CHECK_FALSE(none.hue);
}

TEST_CASE("lightness and chroma are told by their signs", "[colour]") {
    CHECK(leaning({50, 20, 0}, {52, 20, 0}).lightness == 1);
    CHECK(leaning({50, 20, 0}, {48, 20, 0}).lightness == -1);
    CHECK(leaning({50, 20, 0}, {50, 24, 0}).strength == 1);
    CHECK(leaning({50, 0, -20}, {50, 0, -12}).strength == -1);
}

TEST_CASE("a hue moves towards the pole that it has ahead of it", "[colour]") {
    const auto [from, to, pole] = GENERATE(table<Lab, Lab, Pole>({
        {{50, 30, 20}, {50, 20, 30}, Pole::yellow},  // orange to gold
        {{50, 20, 30}, {50, 30, 20}, Pole::red},     // and back
        {{70, 4, 60}, {70, -6, 60}, Pole::green},    // a yellow past its own pole
        {{70, -6, 60}, {70, 4, 60}, Pole::red},      // and back
        {{40, -30, -2}, {40, -28, -14}, Pole::blue}, // green to turquoise
        {{30, 2, -40}, {30, 14, -38}, Pole::red},    // blue to violet
        {{30, 14, -38}, {30, 2, -40}, Pole::blue},   // violet to blue
        {{40, 40, -6}, {40, 40, 6}, Pole::yellow},   // pink over the edge of the circle
        {{40, 40, 6}, {40, 40, -6}, Pole::blue},     // and back
    }));
    REQUIRE(leaning(from, to).hue);
    CHECK(*leaning(from, to).hue == pole);
}

TEST_CASE("greys lean along the axis on which they differ more", "[colour]") {
    CHECK(*leaning({50, 0, 0}, {50, 1, -3}).hue == Pole::blue);
    CHECK(*leaning({50, 0, 0}, {50, 3, -1}).hue == Pole::red);
    CHECK(*leaning({50, 1, 3}, {50, 1, 20}).hue == Pole::yellow);
    CHECK(*leaning({50, 3, 0}, {50, -2, 0}).hue == Pole::green);
}
