#include "photographs/photo_area.h"

#include <catch2/catch.hpp>

using namespace dyeleaf;

namespace {

Between<Percent> shares(double from, double to) {
    return {percent(from), percent(to)};
}

Between<int> pixels(int from, int to) {
    return {from, to};
}

} // namespace

TEST_CASE("a rectangle is written in shares or in pixels", "[photographs]") {
    CHECK(pixels_of({shares(10, 50), shares(0, 100)}, {400, 300}) == PixelArea{40, 0, 160, 300});
    CHECK(pixels_of({pixels(20, 120), pixels(30, 31)}, {400, 300}) == PixelArea{20, 30, 100, 1});
    CHECK(pixels_of({pixels(20, 120), shares(50, 100)}, {400, 301}) == PixelArea{20, 151, 100, 150});
    CHECK(pixels_of({shares(50, 50.1), shares(0, 100)}, {400, 300}).across == 0);
    CHECK(pixels_needed({pixels(20, 120), shares(50, 100)}) == Pixels{120, 0});
}

TEST_CASE("rectangles that touch do not overlap", "[photographs]") {
    const PixelArea area{10, 10, 20, 20};
    CHECK(overlap(area, area));
    CHECK(overlap(area, {29, 29, 5, 5}));
    CHECK_FALSE(overlap(area, {30, 10, 5, 5}));
    CHECK_FALSE(overlap(area, {10, 5, 20, 5}));
}
