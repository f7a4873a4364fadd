// Lengths and geometry.
#include "base/geometry.h"

#include <catch2/catch.hpp>

using namespace dyeleaf;

TEST_CASE("units of length are exact", "[base]") {
    // The international inch of 1959 is 25.4 mm; a PDF point is 1/72 inch (ISO 32000-1, 8.3.2.3).
    CHECK(inches(1).in_mm() == 25.4);
    CHECK(pt(72).in_mm() == Approx(25.4).epsilon(1e-15));
    CHECK(mm(25.4).in_pt() == Approx(72).epsilon(1e-15));
    CHECK(metres(1.5).in_mm() == 1500);
    // ISO 216 A4 in points.
    CHECK(mm(210).in_pt() == Approx(595.2756).margin(0.00005));
    CHECK(mm(297).in_pt() == Approx(841.8898).margin(0.00005));
}

TEST_CASE("lengths are compared with one tolerance", "[base]") {
    CHECK(fits(mm(10), mm(10)));
    CHECK(fits(mm(10.0009), mm(10)));
    CHECK_FALSE(fits(mm(10.002), mm(10)));
    CHECK(near(mm(1) + mm(2), mm(3)));
    CHECK_FALSE(near(mm(1), mm(1.01)));
}

TEST_CASE("lengths print without digits that say nothing", "[base]") {
    CHECK(to_string(mm(40)) == "40 mm");
    CHECK(to_string(inches(0.5)) == "12.7 mm");
    CHECK(to_string(mm(0.126)) == "0.13 mm");
    CHECK(to_string(mm(-0.001)) == "0 mm");
}

TEST_CASE("rectangles shrink, grow, overlap and contain", "[base]") {
    const Rect rect{{mm(10), mm(20)}, {mm(30), mm(40)}};
    CHECK(shrunk(rect, {mm(1), mm(2), mm(3), mm(4)}) == Rect{{mm(14), mm(21)}, {mm(24), mm(36)}});
    CHECK(grown(rect, mm(5)) == Rect{{mm(5), mm(15)}, {mm(40), mm(50)}});
    CHECK(shrunk(rect, Insets::all(mm(50))).size == Size{});
    CHECK(overlap(rect, {{mm(39), mm(59)}, {mm(10), mm(10)}}));
    CHECK_FALSE(overlap(rect, {{mm(40), mm(20)}, {mm(10), mm(10)}})); // only edges meet
    CHECK(contains(rect, rect));
    CHECK_FALSE(contains(rect, grown(rect, mm(0.1))));
}

TEST_CASE("a turned box covers the turned size", "[base]") {
    const Size size{mm(30), mm(10)};
    const auto turn = GENERATE(Turn::none, Turn::right, Turn::half, Turn::left);
    const Rect covered = turned(turn, size).bounds({{}, size});
    CHECK(near(covered.left(), mm(0)));
    CHECK(near(covered.top(), mm(0)));
    CHECK(near(covered.size.width, turned_size(turn, size).width));
    CHECK(near(covered.size.height, turned_size(turn, size).height));
}

TEST_CASE("turning right takes the top edge to the right", "[base]") {
    const Point corner = turned(Turn::right, {mm(30), mm(10)}).apply({});
    CHECK(corner == Point{mm(10), mm(0)});
    const Point half = turned(Turn::half, {mm(30), mm(10)}).apply({});
    CHECK(half == Point{mm(30), mm(10)});
    const Point left = turned(Turn::left, {mm(30), mm(10)}).apply({});
    CHECK(left == Point{mm(0), mm(30)});
}

TEST_CASE("transforms are applied from the inside out", "[base]") {
    const Transform move = Transform::move({mm(5), mm(7)});
    const Transform turn = turned(Turn::right, {mm(30), mm(10)});
    const Point point{mm(3), mm(4)};
    CHECK(move.after(turn).apply(point) == move.apply(turn.apply(point)));
    CHECK(turn.after(move).apply(point) == turn.apply(move.apply(point)));
}
