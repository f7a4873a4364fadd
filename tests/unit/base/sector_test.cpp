#include "base/quad.h"
#include "base/sector.h"

#include <catch2/catch.hpp>

#include <cmath>
#include <numbers>

using namespace dyeleaf;

namespace {

double distance_mm(Point a, Point b) {
    return std::hypot((a.x - b.x).in_mm(), (a.y - b.y).in_mm());
}

// The development of a cup of 60 to 50 mm on a height of 60: see the worked values of its cone.
Sector cup(bool centre_below) {
    return {mm(301.04), mm(361.25), 29.90 * std::numbers::pi / 180, centre_below};
}

} // namespace

TEST_CASE("points of a flat label keep their radius and their share of the angle", "[base]") {
    const bool below = GENERATE(true, false);
    const Sector sector = cup(below);
    const Size flat = sector.flat();
    CHECK(flat.width.in_mm() == Approx(301.04 * 29.90 * std::numbers::pi / 180));
    CHECK(flat.height == mm(361.25) - mm(301.04));
    for (const double across : {0.0, 0.25, 0.5, 0.9, 1.0}) {
        for (const double down : {0.0, 0.3, 1.0}) {
            const Point at = sector.at({flat.width * across, flat.height * down});
            const double radius = below ? 361.25 - down * 60.21 : 301.04 + down * 60.21;
            CHECK(distance_mm(at, sector.centre()) == Approx(radius).margin(1e-6));
            const Point from = at - sector.centre();
            const double angle = std::atan2(from.x.in_mm(), below ? -from.y.in_mm() : from.y.in_mm());
            CHECK(angle == Approx((across - 0.5) * sector.angle).margin(1e-6));
            CHECK(sector.turn_at(flat.width * across) == Approx(below ? angle : -angle).margin(1e-9));
        }
    }
}

TEST_CASE("a sector lies in its rectangle and touches all four sides", "[base]") {
    const auto [degrees, below] = GENERATE(
        table<double, bool>({{29.9, true}, {29.9, false}, {120, true}, {200, true}, {200, false}, {340, true}}));
    const Sector sector{mm(20), mm(30), degrees * std::numbers::pi / 180, below};
    const Size size = sector.bounds();
    const Size flat = sector.flat();
    double left = 1e9, top = 1e9, right = -1e9, bottom = -1e9;
    for (int i = 0; i <= 2000; ++i) {
        for (const Length y : {Length{}, flat.height}) {
            const Point at = sector.at({flat.width * (i / 2000.0), y});
            left = std::min(left, at.x.in_mm());
            right = std::max(right, at.x.in_mm());
            top = std::min(top, at.y.in_mm());
            bottom = std::max(bottom, at.y.in_mm());
        }
    }
    CHECK(left == Approx(0).margin(1e-3));
    CHECK(top == Approx(0).margin(1e-3));
    CHECK(right == Approx(size.width.in_mm()).margin(1e-3));
    CHECK(bottom == Approx(size.height.in_mm()).margin(1e-3));
}

TEST_CASE("rectangles askew overlap where they share an area", "[base]") {
    const Rect square{{mm(-5), mm(-5)}, {mm(10), mm(10)}};
    const double eighth = std::numbers::sqrt2 / 2;
    const auto turned_at = [&](double x, double y) {
        return quad_of({eighth, eighth, -eighth, eighth, mm(x), mm(y)}, square);
    };
    const Quad upright = quad_of({}, square);
    CHECK(overlap(upright, turned_at(10, 0))); // its corner reaches in: 10 − 7.07 < 5
    CHECK_FALSE(overlap(upright, turned_at(12.1, 0)));
    CHECK_FALSE(overlap(upright, turned_at(9, 9))); // the rectangles round the two overlap, they do not
    CHECK(overlap(upright, turned_at(8, 8)));
    CHECK(overlap(upright, upright));
    CHECK_FALSE(overlap(upright, quad_of(Transform::move({mm(10), {}}), square))); // side by side
    CHECK(turned_at(0, 0).bounds().size.width.in_mm() == Approx(10 * std::numbers::sqrt2));
}
