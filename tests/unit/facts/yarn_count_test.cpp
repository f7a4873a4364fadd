// Yarn counts. The expected figures are worked out from the definitions (tex = g/km; Nm = 1000/tex; Ne =
// 590.5412474/tex and worsted = 885.8118712/tex with the pound and the yard of 1959).
#include "facts/yarn_count.h"

#include <catch2/catch.hpp>

using namespace dyeleaf;

TEST_CASE("yarn counts", "[facts]") {
    const auto [length, mass, tex, metric, denier, cotton, worsted] =
        GENERATE(table<double, double, double, double, double, double, double>(
            {{400, 100, 250, 4, 2250, 2.36216, 885.8118712 / 250},
             {366, 100, 273.2240, 3.66, 2459.016, 2.16138, 885.8118712 / 273.2240},
             {425, 115, 270.5882, 3.69565, 2435.294, 2.18244, 885.8118712 / 270.5882},
             {800, 100, 125, 8, 1125, 4.72433, 885.8118712 / 125},
             {225, 50, 222.2222, 4.5, 2000, 2.65744, 885.8118712 / 222.2222}}));
    const YarnCounts counts = yarn_counts(grams(mass), metres(length));
    CHECK(counts.tex == Approx(tex).epsilon(1e-6));
    CHECK(counts.dtex == Approx(10 * tex).epsilon(1e-6));
    CHECK(counts.denier == Approx(denier).epsilon(1e-6));
    CHECK(counts.metric == Approx(metric).epsilon(1e-5));
    CHECK(counts.cotton == Approx(cotton).epsilon(1e-5));
    CHECK(counts.worsted == Approx(worsted).epsilon(1e-6));
}

// A worsted count is half as large again as a cotton one: 840 yd to 560 yd.
TEST_CASE("the hanks of worsted and cotton", "[facts]") {
    const YarnCounts counts = yarn_counts(grams(453.59237), metres(0.9144) * 840);
    CHECK(counts.cotton == Approx(1));
    CHECK(counts.worsted == Approx(1.5));
}

// 63 g of a yarn of 400 m in 100 g are 252 m; 20 g are 80 m (arithmetic).
TEST_CASE("length goes with weight", "[facts]") {
    CHECK(length_in(grams(63), grams(100), metres(400)).in_m() == Approx(252));
    CHECK(length_in(grams(20), grams(100), metres(400)).in_m() == Approx(80));
    CHECK(length_in(grams(100), grams(20), metres(84)).in_m() == Approx(420));
}
