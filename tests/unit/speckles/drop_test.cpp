#include "speckles/drop.h"

#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>
#include <numbers>

using namespace dyeleaf;

namespace {

// How far the points of a drop round the origin lie from it, the nearest and the farthest.
std::pair<double, double> reach_of(const Path& path) {
    double nearest = 1e9;
    double farthest = 0;
    for (const auto& step : path) {
        const auto* curve = std::get_if<CurveTo>(&step);
        if (curve == nullptr) continue;
        const double reach = std::hypot(curve->to.x.in_mm(), curve->to.y.in_mm());
        nearest = std::min(nearest, reach);
        farthest = std::max(farthest, reach);
    }
    return {nearest, farthest};
}

} // namespace

TEST_CASE("what a path covers", "[speckles]") {
    CHECK(covered(rect_path({{mm(3), mm(4)}, {mm(5), mm(2)}})) == Approx(10));
    // Of four cubic curves, which leave the circle by at most 0.03 % of its radius.
    CHECK(covered(circle_path({mm(-3), mm(7)}, mm(2))) == Approx(std::numbers::pi * 4).epsilon(0.0006));
}

TEST_CASE("a drop covers as much as a circle of its width and is none", "[speckles]") {
    for (std::uint64_t seed = 0; seed < 200; ++seed) {
        for (const double roughness : {0.1, 0.17, 0.28}) {
            const Path drop = drop_path({}, mm(2.5), roughness, drop_points(mm(2.5)), seed);
            CHECK(covered(drop) == Approx(std::numbers::pi / 4 * 2.5 * 2.5));
            const auto [nearest, farthest] = reach_of(drop);
            REQUIRE(farthest / nearest > 1.02);
            REQUIRE(farthest < 1.25 * (1 + 1.3 * roughness) / (1 - 0.9 * roughness)); // never a spike
            REQUIRE(nearest > 1.25 * (1 - 1.5 * roughness));
        }
    }
}

TEST_CASE("a drop is one closed path of curves, the wider the more of them", "[speckles]") {
    CHECK(drop_points(mm(0.3)) == 5);
    CHECK(drop_points(mm(2.5)) == 7);
    CHECK(drop_points(mm(20)) == 14);
    const Path drop = drop_path({mm(4), mm(4)}, mm(1), 0.2, 6, 3);
    REQUIRE(drop.size() == 8);
    CHECK(std::holds_alternative<MoveTo>(drop.front()));
    CHECK(std::holds_alternative<ClosePath>(drop.back()));
    CHECK(std::get<MoveTo>(drop.front()).to == std::get<CurveTo>(drop[6]).to);
}

TEST_CASE("a drop keeps its outline in every size", "[speckles]") {
    const Path small = drop_path({}, mm(1), 0.2, 7, 11);
    const Path large = drop_path({}, mm(3), 0.2, 7, 11);
    for (std::size_t i = 1; i + 1 < small.size(); ++i) {
        CHECK(near(std::get<CurveTo>(small[i]).to.x * 3, std::get<CurveTo>(large[i]).to.x));
        CHECK(near(std::get<CurveTo>(small[i]).control1.y * 3, std::get<CurveTo>(large[i]).control1.y));
    }
}
