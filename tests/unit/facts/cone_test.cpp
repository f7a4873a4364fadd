#include "facts/cone.h"
#include "facts/jar_label.h"

#include <catch2/catch.hpp>

#include <cmath>
#include <numbers>

using namespace dyeleaf;

namespace {

double degrees(double radians) {
    return radians * 180 / std::numbers::pi;
}

Wall straight(double diameter) {
    return {mm(diameter), mm(diameter), mm(60)};
}

} // namespace

// Worked from the development of a cone, s = √(h² + (R − r)²), ρ₂ = sR / (R − r), θ = 2π (R − r) / s, by an independent
// script; the angles also follow from ρ₂ θ = 2πR.
TEST_CASE("a tapered wall laid flat", "[facts]") {
    const auto [top, bottom, height, slope, outer, inner, angle] =
        GENERATE(table<double, double, double, double, double, double, double>({
            {60, 50, 60, 60.208, 361.25, 301.04, 29.90},
            {52, 48, 50, 50.040, 650.52, 600.48, 14.39},
            {70, 50, 70, 70.711, 247.49, 176.78, 50.91},
            {50, 60, 60, 60.208, 361.25, 301.04, 29.90}, // wider below
        }));
    const auto cone = flat_cone(mm(top), mm(bottom), mm(height));
    REQUIRE(cone);
    CHECK(cone->slope.in_mm() == Approx(slope).margin(0.0005));
    CHECK(cone->outer.in_mm() == Approx(outer).margin(0.005));
    CHECK(cone->inner.in_mm() == Approx(inner).margin(0.005));
    CHECK(degrees(cone->angle) == Approx(angle).margin(0.005));
    // Each edge goes once round its end of the jar.
    CHECK((cone->outer * cone->angle).in_mm() == Approx(std::numbers::pi * std::max(top, bottom)));
    CHECK((cone->inner * cone->angle).in_mm() == Approx(std::numbers::pi * std::min(top, bottom)));
}

TEST_CASE("a straight wall is no cone", "[facts]") {
    CHECK_FALSE(flat_cone(mm(60), mm(60), mm(60)));
    CHECK_FALSE(arc_of(straight(60), mm(193.8)));
}

// Worked values for the mean circumference: 60 to 50 mm on 60 mm dips by 11 mm, 51 to 50 by 1.0 mm, 48.5 to 48 by 0.5.
TEST_CASE("how far the edge of a label dips", "[facts]") {
    const auto [top, bottom, expected, margin] = GENERATE(
        table<double, double, double, double>({{60, 50, 11.3, 0.05}, {51, 50, 1.04, 0.005}, {48.5, 48, 0.5, 0.005}}));
    const auto cone = flat_cone(mm(top), mm(bottom), mm(60));
    REQUIRE(cone);
    const Length round = std::numbers::pi * mm((top + bottom) / 2);
    CHECK(dip(round, cone->middle()).in_mm() == Approx(expected).margin(margin));
    // Against the true height of the arc, ρ (1 − cos φ/2).
    const Length rise = cone->middle() * (1 - std::cos(round / cone->middle() / 2));
    CHECK(dip(round, cone->middle()).in_mm() == Approx(rise.in_mm()).epsilon(0.01));
}

TEST_CASE("a label is cut as a sector where a rectangle would dip more than a millimetre", "[facts]") {
    const Wall cup{mm(60), mm(50), mm(60)};
    REQUIRE(arc_of(cup, wrap_length(mm(55))));
    // The paper's own thickness takes its middle to a radius of 27.55 mm: 60.208 × 27.55 / 5.
    CHECK(arc_of(cup, wrap_length(mm(55)))->in_mm() == Approx(331.75).margin(0.01));
    CHECK(arc_of({mm(50), mm(60), mm(60)}, wrap_length(mm(55)))->in_mm() == Approx(-331.75).margin(0.01));
    CHECK_FALSE(arc_of({mm(48.5), mm(48), mm(60)}, wrap_length(mm(48.25))));
    // The front panel of a slight taper stays straight where the wrap of the same jar does not.
    const Wall slight{mm(52), mm(48), mm(50)};
    CHECK(arc_of(slight, wrap_length(mm(50))));
    CHECK_FALSE(arc_of(slight, front_width(mm(50))));
    CHECK(label_height(cup) == mm(60.2));
}

// π (D + 0.1 mm) is what a strip of paper measures; a circumference is π D.
TEST_CASE("three ways to measure one jar", "[facts]") {
    const double round = std::numbers::pi;
    CHECK(diameter_from(Girth::By::diameter, mm(42)) == mm(42));
    CHECK(diameter_from(Girth::By::circumference, mm(42 * round)).in_mm() == Approx(42));
    CHECK(diameter_from(Girth::By::strip, mm(42.1 * round)).in_mm() == Approx(42));
    CHECK(wrap_length(diameter_from(Girth::By::strip, mm(132.4))) == mm(137.4)); // the strip and its overlap
    const Wall wall = wall_of({Girth::By::strip, mm(132.4), mm(132.4)}, mm(70));
    CHECK(wall.height == mm(66));
    CHECK(near(wall.top, wall.bottom));
}
