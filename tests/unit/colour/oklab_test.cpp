#include "colour/oklab.h"

#include "colour/spaces.h"

#include <catch2/catch.hpp>

using namespace dyeleaf;

// CSS Color 4: white is oklab(1 0 0); red, lime and blue as its sample code has them.
TEST_CASE("CIELAB becomes Oklab and comes back", "[colour]") {
    struct Row {
        const char* rgb;
        Oklab oklab;
    };
    const auto row = GENERATE(values<Row>({{"#ffffff", {1, 0, 0}},
                                           {"#000000", {0, 0, 0}},
                                           {"#ff0000", {0.62796, 0.22486, 0.12585}},
                                           {"#00ff00", {0.86644, -0.23389, 0.17950}},
                                           {"#0000ff", {0.45201, -0.03246, -0.31153}}}));
    const Lab lab = to_lab(parse_hex(row.rgb).value());
    const Oklab oklab = to_oklab(lab);
    CHECK(oklab.lightness == Approx(row.oklab.lightness).margin(2e-5));
    CHECK(oklab.a == Approx(row.oklab.a).margin(2e-5));
    CHECK(oklab.b == Approx(row.oklab.b).margin(2e-5));
    const Lab back = to_lab(oklab);
    CHECK(back.lightness == Approx(lab.lightness).margin(1e-6));
    CHECK(back.a == Approx(lab.a).margin(1e-6));
    CHECK(back.b == Approx(lab.b).margin(1e-6));
}
