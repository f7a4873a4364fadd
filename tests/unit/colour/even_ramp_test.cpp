#include "colour/even_ramp.h"

#include "base/number.h"
#include "colour/difference.h"
#include "colour/spaces.h"

#include <algorithm>
#include <catch2/catch.hpp>
#include <string>

using namespace dyeleaf;

namespace {

Shade shade(double depth, const char* colour) {
    return {percent(depth), to_lab(parse_hex(colour).value())};
}

// "0.25 0.35~ 0.5", estimated ones with a ~.
std::string written(const std::vector<RampShade>& ramp) {
    std::string text;
    for (const RampShade& one : ramp)
        text += (text.empty() ? "" : " ") + decimal(one.depth.number(), 6) + (one.is_estimated ? "~" : "");
    return text;
}

std::vector<double> steps(const std::vector<RampShade>& ramp) {
    std::vector<double> result;
    for (std::size_t i = 1; i < ramp.size(); ++i)
        result.push_back(delta_e_2000(ramp[i - 1].colour, ramp[i].colour));
    return result;
}

const std::vector<Shade> pink{shade(0.25, "#e188be"), shade(0.5, "#d667aa"), shade(1, "#cb4a92"), shade(2, "#bc2e74")};

} // namespace

TEST_CASE("a ramp has the recorded shades and even steps between them", "[colour]") {
    const auto ramp = even_ramp(pink);
    CHECK(written(ramp) == "0.25 0.35~ 0.5 0.71~ 1 1.4~ 2");
    CHECK(ramp.front().colour == pink.front().colour);
    CHECK(ramp.back().colour == pink.back().colour);
    const auto [least, greatest] = std::ranges::minmax(steps(ramp));
    CHECK(greatest / least < 1.25);
}

TEST_CASE("two swatches make a ramp, one or none do not", "[colour]") {
    const auto ramp = even_ramp({pink[0], pink[3]});
    CHECK(ramp.size() == 7);
    CHECK(std::ranges::count(ramp, true, &RampShade::is_estimated) == 5);
    const auto [least, greatest] = std::ranges::minmax(steps(ramp));
    CHECK(greatest / least < 1.6); // 1.1 and 1.4 are round figures
    CHECK(even_ramp({pink[0]}).empty());
    CHECK(even_ramp({}).empty());
}

TEST_CASE("shades that hardly differ make no ramp", "[colour]") {
    CHECK(even_ramp({shade(1, "#5a6674"), shade(2, "#5a6674")}).empty());
    CHECK(even_ramp({shade(1, "#5a6674"), shade(2, "#586472")}).empty());
    // Far enough apart for one step between, not for more.
    CHECK(written(even_ramp({shade(0.5, "#e1cd98"), shade(1, "#d7bb7b")})) == "0.5 0.72~ 1");
}

TEST_CASE("a recorded shade too near to another is left out of the steps", "[colour]") {
    const auto ramp = even_ramp({pink[0], shade(0.26, "#e187bd"), pink[3]});
    CHECK(ramp.size() == 7);
    CHECK(std::ranges::find(ramp, percent(0.26), &RampShade::depth) == ramp.end());
}

TEST_CASE("twelve depths are enough of a ramp by themselves", "[colour]") {
    std::vector<Shade> twelve;
    for (int i = 0; i < 12; ++i)
        twelve.push_back({percent(0.25 * (i + 1)), Lab{90.0 - 6 * i, 0, 0}});
    const auto ramp = even_ramp(twelve);
    CHECK(ramp.size() <= 9);
    CHECK(std::ranges::count(ramp, true, &RampShade::is_estimated) == 0);
}

TEST_CASE("depths from a hundredth to ten per cent keep two figures", "[colour]") {
    const auto ramp = even_ramp({shade(0.01, "#eeeeee"), shade(0.2, "#aaaaaa"), shade(10, "#222222")});
    REQUIRE(ramp.size() >= 5);
    REQUIRE(ramp.size() <= 9);
    for (std::size_t i = 1; i < ramp.size(); ++i) {
        CHECK(ramp[i].depth > ramp[i - 1].depth);
        if (ramp[i].is_estimated) CHECK(decimal(ramp[i].depth.number(), 6) == significant(ramp[i].depth.number(), 2));
    }
}

TEST_CASE("depths too near for two figures are not told apart", "[colour]") {
    CHECK(even_ramp({shade(1, "#eeeeee"), shade(1.01, "#222222")}).empty());
}

TEST_CASE("shades that grow lighter are followed as recorded", "[colour]") {
    const auto ramp = even_ramp({shade(0.5, "#303742"), shade(1, "#8a8893"), shade(2, "#5a6674")});
    REQUIRE(ramp.size() >= 5);
    CHECK(ramp.front().depth == percent(0.5));
    CHECK(ramp.back().depth == percent(2));
}
