#include "colour/kubelka_munk.h"

#include <catch2/catch.hpp>
#include <cmath>

using namespace dyeleaf;

TEST_CASE("reflectance becomes K/S", "[colour]") {
    // K/S = (1 − R)² / 2R worked out by hand in fractions: of 0.9 it is 1/180, of 0.3 it is 49/60.
    struct Row {
        double reflectance, ratio;
    };
    const auto row = GENERATE(values<Row>({{0.9, 1.0 / 180},
                                           {0.8, 0.025},
                                           {0.7, 9.0 / 140},
                                           {0.6, 2.0 / 15},
                                           {0.5, 0.25},
                                           {0.4, 0.45},
                                           {0.3, 49.0 / 60},
                                           {0.25, 1.125},
                                           {0.2, 1.6},
                                           {0.1, 4.05},
                                           {0.05, 9.025},
                                           {0.01, 49.005}}));
    CHECK(absorption_ratio(row.reflectance) == Approx(row.ratio).epsilon(1e-12));
    CHECK(reflectance_of(row.ratio) == Approx(row.reflectance).epsilon(1e-12));
}

TEST_CASE("K/S becomes reflectance", "[colour]") {
    // R = 1 + K/S − √((K/S)² + 2 K/S), to eight decimals by another program; of 0.5 it is (3 − √5) / 2.
    struct Row {
        double ratio, reflectance;
    };
    const auto row = GENERATE(values<Row>({{0, 1},
                                           {0.01, 0.86822553},
                                           {0.05, 0.72984379},
                                           {0.1, 0.64174243},
                                           {0.25, 0.5},
                                           {0.5, 0.38196601},
                                           {1, 0.26794919},
                                           {2, 0.17157288},
                                           {4, 0.10102051},
                                           {5, 0.08392022},
                                           {10, 0.04554885},
                                           {20, 0.02382304}}));
    CHECK(reflectance_of(row.ratio) == Approx(row.reflectance).margin(5e-9));
    CHECK(absorption_ratio(row.reflectance) == Approx(row.ratio).epsilon(1e-5).margin(1e-9));
    const double textbook = 1 + row.ratio - std::sqrt(row.ratio * row.ratio + 2 * row.ratio);
    CHECK(reflectance_of(row.ratio) == Approx(textbook).epsilon(1e-12));
}

// D. R. Duncan's law of mixture (1940; from memory): K/S of the base and of each dye by its depth add up. The sums are
// worked out by another program.
TEST_CASE("K/S of dyes on a base adds up", "[colour]") {
    CHECK(absorption_ratio(0.85) == Approx(0.0132352941));
    CHECK(reflectance_of(absorption_ratio(0.85) + 1.2 * 1 + 0.4 * 0.5) == Approx(0.2169419201));
    const double base = absorption_ratio(0.8);
    CHECK(reflectance_of(base + 0.5) == Approx(0.3736421).margin(5e-8));
    CHECK(reflectance_of(base + 1) == Approx(0.2641408).margin(5e-8));
    CHECK(reflectance_of(base + 2) == Approx(0.1700701).margin(5e-8));
    CHECK(reflectance_of(base + 4) == Approx(0.1005076).margin(5e-8));
}

TEST_CASE("black and more than white keep K/S within reason", "[colour]") {
    CHECK(absorption_ratio(1.02) == 0);
    CHECK(absorption_ratio(0) == absorption_ratio(0.001));
    CHECK(absorption_ratio(-0.1) == absorption_ratio(0.001));
    CHECK(absorption_ratio(0) < 500);
}
