#include "colour/shade_curve.h"

#include "colour/difference.h"
#include "colour/kubelka_munk.h"
#include "colour/spaces.h"
#include "colour/xyz.h"

#include <catch2/catch.hpp>
#include <cmath>

using namespace dyeleaf;

namespace {

// A grey that reflects this much at every wavelength.
Lab grey(double reflectance) {
    return to_lab(Xyz{white_d50.x * reflectance, reflectance, white_d50.z * reflectance});
}

double reflectance_of_grey(Lab colour) {
    return to_xyz(colour).y;
}

Lab hex(const char* text) {
    return to_lab(parse_hex(text).value());
}

} // namespace

TEST_CASE("a monotone curve goes through its points and no further", "[colour]") {
    const MonotoneCurve curve{{0, 1, 2, 4, 5}, {0, 1, 1, 5, 5.5}};
    CHECK(curve.at(0) == 0);
    CHECK(curve.at(1) == 1);
    CHECK(curve.at(4) == 5);
    CHECK(curve.at(1.5) == Approx(1)); // level between equal points
    CHECK(curve.at(-1) == 0);
    CHECK(curve.at(9) == 5.5);
    double last = 0;
    for (int i = 0; i <= 500; ++i) {
        const double here = curve.at(i / 100.0);
        CHECK(here >= last - 1e-12);
        last = here;
    }
}

TEST_CASE("a monotone curve has the slopes of its source", "[colour]") {
    CHECK(MonotoneCurve({0, 2}, {1, 5}).at(0.5) == Approx(2)); // two points: straight
    CHECK(MonotoneCurve({0, 1, 3}, {0, 2, 6}).at(2.2) == Approx(4.4));
    // Points 0, 1, 4 at even distances: slopes 1 and 3 of the pieces give 2 / (1/1 + 1/3) = 1.5 in the middle, and the
    // parabola's 0 at the left end; the cubic between is then (0 + 1)/2 + (0 − 1.5)/8 half way.
    CHECK(MonotoneCurve({0, 1, 2}, {0, 1, 4}).at(0.5) == Approx(0.3125));
    // Points that turn: level at the top.
    const MonotoneCurve turning{{0, 1, 2}, {0, 1, 0}};
    CHECK(turning.at(0.999) < 1);
    CHECK(turning.at(1.001) < 1);
}

TEST_CASE("recorded shades stand as they are", "[colour]") {
    const std::vector<Shade> shades{{percent(0.25), hex("#e188be")},
                                    {percent(0.5), hex("#d667aa")},
                                    {percent(2), hex("#bc2e74")},
                                    {percent(4), hex("#101010")}};
    const ShadeCurve curve{shades};
    for (const Shade& shade : shades)
        CHECK(delta_e_2000(curve.at(shade.depth), shade.colour) < 1e-6);
}

TEST_CASE("between shades K/S follows depth as a power", "[colour]") {
    // K/S from 0.5 at 0.5 % to 8 at 2 %: 16 times over 4 times the depth, so that 1 % has the geometric mean, 2.
    const ShadeCurve curve{{{percent(0.5), grey(reflectance_of(0.5))}, {percent(2), grey(reflectance_of(8))}}};
    CHECK(reflectance_of_grey(curve.at(percent(1))) == Approx(0.17157288).epsilon(1e-3)); // that of K/S 2
    CHECK(std::abs(curve.at(percent(1)).a) < 1e-6);                                       // greys stay grey
    CHECK(std::abs(curve.at(percent(1)).b) < 1e-6);
}

TEST_CASE("beyond the recorded depths nothing is guessed", "[colour]") {
    const ShadeCurve curve{{{percent(0.5), grey(0.5)}, {percent(2), grey(0.1)}}};
    CHECK(reflectance_of_grey(curve.at(percent(0.1))) == Approx(0.5));
    CHECK(reflectance_of_grey(curve.at(percent(5))) == Approx(0.1));
}

TEST_CASE("odd shades make no odd numbers", "[colour]") {
    // Black, white, more than white, and a colour that no surface has.
    const ShadeCurve curve{{{percent(0.01), Lab{104, 0, 0}},
                            {percent(0.1), Lab{100, 0, 0}},
                            {percent(1), Lab{30, 80, -120}},
                            {percent(10), Lab{0, 0, 0}}}};
    for (double depth = 0.01; depth <= 10; depth *= 1.1) {
        const Lab colour = curve.at(percent(depth));
        CHECK(std::isfinite(colour.lightness));
        CHECK(std::isfinite(colour.a));
        CHECK(std::isfinite(colour.b));
        CHECK(colour.lightness > -1);
        CHECK(colour.lightness < 101);
    }
}
