#include "symbols/pen.h"

#include "symbols/figures.h"

#include <catch2/catch.hpp>

#include <stdexcept>

using namespace dyeleaf;

TEST_CASE("a path is read as SVG writes it", "[symbols]") {
    const DisplayList list{{}, {StrokePath{path_of("M 10 20 H 30 V 40 L 5 50 C 5 60 10 70 20 70 Z"), {}, mm(0.1), {}}}};
    CHECK(dump(list) == "stroke 0.5,2 2.5x5 #000000 0.1mm\n");
    CHECK(path_of("M 0 0 H 10 Z").size() == 3);
    CHECK(path_of("").empty());
    CHECK_THROWS_AS(path_of("M 0 0 l 10 10"), std::logic_error);
    CHECK_THROWS_AS(path_of("M 0"), std::logic_error);
}

TEST_CASE("paths are mirrored and turned", "[symbols]") {
    CHECK(near(std::get<MoveTo>(mirrored(path_of("M 40 7"), 50)[0]).to.x, units(60)));
    const Point right = std::get<MoveTo>(transformed(path_of("M 50 40"), turned_about(at(50, 50), 90))[0]).to;
    CHECK(near(right.x, units(60)));
    CHECK(near(right.y, units(50)));
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
