#include "symbols/pen.h"

#include "symbols/figures.h"

#include <catch2/catch.hpp>

#include <stdexcept>

using namespace dyeleaf;
using namespace dyeleaf::drawing;

TEST_CASE("H and V go on from where the step before ended", "[symbols]") {
    const Path path = outline("M 10 20 H 30 V 40 C 5 60 10 70 20 70 H 7 Z");
    REQUIRE(path.size() == 6);
    CHECK(near(std::get<LineTo>(path[1]).to.x, mm(3)));
    CHECK(near(std::get<LineTo>(path[1]).to.y, mm(2)));
    CHECK(near(std::get<LineTo>(path[2]).to.x, mm(3)));
    CHECK(near(std::get<LineTo>(path[2]).to.y, mm(4)));
    CHECK(near(std::get<LineTo>(path[4]).to.y, mm(7)));
}

TEST_CASE("figures are centred and of one height", "[symbols]") {
    for (const char* const figures : {"95", "70", "60", "50", "40", "30", "P", "F", "W"}) {
        INFO(figures);
        const DisplayList list{{}, {FillPath{figures_path(figures, at(50, 50)), {}}}};
        CHECK(dump(list).find(",3.4 ") != std::string::npos);
        CHECK(dump(list).find("x3.2 ") != std::string::npos);
    }
    CHECK_THROWS_AS(figures_path("8", at(0, 0)), std::logic_error);
}
