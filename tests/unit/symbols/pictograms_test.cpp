#include "symbols/least_size.h"

#include "drawn.h"

#include <algorithm>

using namespace dyeleaf;

namespace {

std::vector<std::string> pictograms() {
    std::vector<std::string> keys;
    for (const std::string_view key : symbol_keys()) {
        if (key.starts_with("ghs/")) keys.emplace_back(key);
    }
    return keys;
}

bool is_grey(Rgb colour) {
    return colour.red == colour.green && colour.green == colour.blue;
}

// How far from the middle along both axes together: a square set on a point has the same all along its sides.
Length reach(Point p) {
    const auto size = [](Length length) { return larger(length, -length); };
    return size(p.x - mm(5)) + size(p.y - mm(5));
}

} // namespace

TEST_CASE("nine pictograms, by number", "[symbols]") {
    const auto keys = pictograms();
    REQUIRE(keys.size() == 9);
    CHECK(keys.front() == "ghs/GHS01");
    CHECK(keys.back() == "ghs/GHS09");
}

TEST_CASE("a pictogram is a square set on a point, its frame's corners on the edges", "[symbols]") {
    for (const std::string& key : pictograms()) {
        INFO(key);
        const auto drawing = symbol_drawing(key, false);
        CHECK(drawing->size == Size{mm(10), mm(10)});
        const auto ink = inked(key);
        CHECK(ink[0].points == std::vector<Point>{{mm(5), {}}, {mm(10), mm(5)}, {mm(5), mm(10)}, {{}, mm(5)}});
        CHECK(ink[1].colour == Rgb{1, 1, 1});
        const Length thickness = (mm(5) - reach(ink[1].points[0])) / 1.41421356;
        const Length side = mm(10) / 1.41421356;
        CHECK(thickness / side > 0.05);
        CHECK(thickness / side < 0.1);
    }
}

TEST_CASE("the frame is red, or black where there is no colour", "[symbols]") {
    for (const std::string& key : pictograms()) {
        INFO(key);
        const auto coloured = inked(key);
        CHECK(coloured[0].colour.red > 0.8);
        CHECK(coloured[0].colour.green < 0.15);
        CHECK(coloured[0].colour.blue < 0.15);
        CHECK(std::all_of(coloured.begin() + 1, coloured.end(), [](const Inked& one) { return is_grey(one.colour); }));
        const auto mono = inked(key, true);
        CHECK(mono[0].colour == Rgb{});
        CHECK(mono.size() == coloured.size());
    }
}

TEST_CASE("a symbol keeps its distance from the frame", "[symbols]") {
    for (const std::string& key : pictograms()) {
        INFO(key);
        const auto ink = inked(key);
        const Length inside = reach(ink[1].points[0]);
        for (std::size_t i = 2; i < ink.size(); ++i) {
            if (ink[i].colour == Rgb{1, 1, 1}) continue;
            for (const Point point : ink[i].points) {
                INFO(point.x.in_mm() << ", " << point.y.in_mm());
                CHECK((reach(point) + ink[i].width * 0.7072).in_mm() < inside.in_mm() - 0.15);
            }
        }
    }
}

// CLP, annex I, table 1.3: 10 mm at least, 16 mm if possible on a label of 52 × 74 mm; sides of the frame.
TEST_CASE("least sizes", "[symbols]") {
    CHECK(pictogram_height(mm(10)).in_mm() == Approx(14.142).margin(0.001));
    CHECK(pictogram_height(mm(16)).in_mm() == Approx(22.627).margin(0.001));
    CHECK(symbol_rules("ghs/GHS07").is_hazard);
    CHECK(near(symbol_rules("ghs/GHS07").least_height, mm(14.142)));
    CHECK_FALSE(symbol_rules("care/wash 30").is_hazard);
    CHECK(symbol_rules("care/wash 30").least_height == mm(5));
    CHECK(supply_pictogram_side({mm(52), mm(74)}).in_mm() == Approx(16.017).margin(0.001));
    CHECK(supply_pictogram_side({mm(30), mm(40)}) == mm(10));
}
