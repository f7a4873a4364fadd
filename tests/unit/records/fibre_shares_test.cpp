// Shares that do not add up to 100 %.
#include "records/fibre_shares.h"

#include <catch2/catch.hpp>

using namespace dyeleaf;

namespace {

using Figures = std::vector<double>;

std::vector<Percent> shares(const Figures& figures) {
    std::vector<Percent> result;
    for (const double figure : figures)
        result.push_back(percent(figure));
    return result;
}

} // namespace

TEST_CASE("shares that rounding or traces explain are made whole by largest remainder", "[records]") {
    const auto [written, mended] = GENERATE(table<Figures, Figures>({
        {{33.3, 33.3, 33.3}, {34, 33, 33}}, // equal remainders in the order written
        {{33, 33, 33}, {34, 33, 33}},
        {{33.33, 33.33, 33.33}, {34, 33, 33}},
        {{74.9, 25}, {75, 25}},
        {{80, 15, 4.9}, {80, 15, 5}},
        {{74, 25}, {75, 25}}, // 99 %
        {{76, 25}, {75, 25}}, // 101 %
        {{66.7, 33.4}, {67, 33}},
        {{75, 24.5}, {75, 25}},
        {{50, 50}, {50, 50}},
    }));
    CAPTURE(written);
    CHECK(made_whole(shares(written)) == shares(mended));
}

TEST_CASE("other shares are left for the dyer to mend", "[records]") {
    const auto written = GENERATE(values<Figures>({
        {75, 25.5}, // half a percent too much, and tenths do not round to that
        {73.9, 25}, // 98.9 %
        {76.1, 25}, // 101.1 %
        {72, 25},
        {85, 25},
        {99.9},      // one fibre is 100 % or is not alone
        {99.5, 0.4}, // would become 100 % and nothing
        {},
    }));
    CAPTURE(written);
    CHECK_FALSE(made_whole(shares(written)));
}

TEST_CASE("shares are whole to the last decimal", "[records]") {
    CHECK(are_whole(shares({33.4, 33.3, 33.3})));
    CHECK(are_whole(shares({0.1, 99.9})));
    CHECK_FALSE(are_whole(shares({33.33, 33.33, 33.33})));
}
