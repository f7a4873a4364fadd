#include "symbols/ghs_pictograms.h"

#include "base/overloaded.h"
#include "symbols/pen.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>
#include <iterator>
#include <set>
#include <stdexcept>
#include <string>

using namespace dyeleaf;

namespace {

const Rgb black{0, 0, 0};
const Rgb white{1, 1, 1};
const Rgb red{1, 0, 0};

constexpr Point middle{mm(5), mm(5)};

struct Inked {
    Path path;
    Rgb colour;
    Length beyond; // how far the ink reaches to either side of the path
};

// A pictogram is made of fills and strokes alone.
Inked inked(const DisplayItem& item) {
    if (const auto* fill = std::get_if<FillPath>(&item)) return {fill->path, fill->colour, {}};
    const auto& stroke = std::get<StrokePath>(item);
    return {stroke.path, stroke.colour, stroke.width / 2};
}

Point on_curve(Point from, const CurveTo& curve, double t) {
    const double u = 1 - t;
    const auto mix = [&](Length a, Length b, Length c, Length d) {
        return a * (u * u * u) + b * (3 * u * u * t) + c * (3 * u * t * t) + d * (t * t * t);
    };
    return {mix(from.x, curve.control1.x, curve.control2.x, curve.to.x),
            mix(from.y, curve.control1.y, curve.control2.y, curve.to.y)};
}

// Corners, and points along the curves.
std::vector<Point> points_of(const Path& path) {
    std::vector<Point> points;
    for (const auto& step : path) {
        std::visit(Overloaded{
                       [&](const CurveTo& curve) {
                           const Point from = points.back();
                           for (int i = 1; i <= 20; ++i)
                               points.push_back(on_curve(from, curve, i / 20.0));
                       },
                       [](ClosePath) {},
                       [&](const auto& line) { points.push_back(line.to); },
                   },
                   step);
    }
    return points;
}

Length distance(Length a, Length b) {
    return mm(std::abs((a - b).in_mm()));
}

// How far from the middle a square on its point lies that goes through this point.
Length reach(Point point) {
    return distance(point.x, middle.x) + distance(point.y, middle.y);
}
Length reach(const Inked& ink) {
    Length most;
    for (const Point point : points_of(ink.path))
        most = larger(most, reach(point));
    return most + ink.beyond * std::sqrt(2.0);
}

std::vector<NamedDrawing> both_kinds() {
    std::vector<NamedDrawing> all = ghs_pictograms(false);
    std::ranges::copy(ghs_pictograms(true), std::back_inserter(all));
    return all;
}

} // namespace

TEST_CASE("there are nine hazard pictograms", "[symbols]") {
    const bool mono = GENERATE(false, true);
    std::vector<std::string> names;
    std::set<std::string> drawings;
    for (const NamedDrawing& drawing : ghs_pictograms(mono)) {
        names.push_back(drawing.name);
        drawings.insert(dump(drawing.list));
    }
    CHECK(names ==
          std::vector<std::string>{"GHS01", "GHS02", "GHS03", "GHS04", "GHS05", "GHS06", "GHS07", "GHS08", "GHS09"});
    CHECK(drawings.size() == 9);
}

TEST_CASE("a pictogram is 10 mm wide and high", "[symbols]") {
    for (const NamedDrawing& drawing : both_kinds()) {
        INFO(drawing.name);
        CHECK(drawing.list.size == Size{mm(10), mm(10)});
    }
}

// UN GHS 1.4.10.4; CLP Annex I 1.2.1: a square set at a point.
TEST_CASE("the frame is a square on its point that fills the drawing", "[symbols]") {
    for (const NamedDrawing& drawing : both_kinds()) {
        INFO(drawing.name);
        const std::vector<Point> corners = points_of(inked(drawing.list.items.front()).path);
        REQUIRE(corners == std::vector<Point>{{mm(5), mm(0)}, {mm(10), mm(5)}, {mm(5), mm(10)}, {mm(0), mm(5)}});
        const Point side = corners[1] - corners[0];
        CHECK(std::hypot(side.x.in_mm(), side.y.in_mm()) == Approx(10 / std::sqrt(2.0)));
    }
}

// CLP Annex I, table 1.3, measures the side of the frame; the height is the diagonal, √2 times that.
TEST_CASE("a pictogram is as high as its frame's diagonal", "[symbols]") {
    const auto [side, height] = GENERATE(table<double, double>({{10, 14.142}, {16, 22.627}, {23, 32.527}}));
    CHECK(near(ghs_height(mm(side)), mm(height)));
}

TEST_CASE("the ground is white and the symbol keeps off the frame", "[symbols]") {
    for (const NamedDrawing& drawing : both_kinds()) {
        INFO(drawing.name);
        const auto& items = drawing.list.items;
        const Inked ground = inked(items.at(1));
        CHECK(ground.colour == white);
        for (const Point corner : points_of(ground.path))
            CHECK(near(reach(corner), reach(ground)));
        // The frame: clearly visible, no more than a tenth of its side.
        const Length width = (mm(5) - reach(ground)) / std::sqrt(2.0);
        CHECK(width > mm(0.4));
        CHECK(width < mm(0.7));

        REQUIRE(items.size() > 2);
        for (std::size_t i = 2; i < items.size(); ++i) {
            INFO("item " << i);
            CHECK(reach(inked(items[i])).in_mm() < (reach(ground) - mm(0.15)).in_mm());
        }
    }
}

TEST_CASE("a pictogram is black and white in a red frame, and a black one in mono", "[symbols]") {
    const bool mono = GENERATE(false, true);
    for (const NamedDrawing& drawing : ghs_pictograms(mono)) {
        INFO(drawing.name);
        const auto& items = drawing.list.items;
        CHECK(inked(items.front()).colour == (mono ? black : red));
        for (std::size_t i = 1; i < items.size(); ++i) {
            const Rgb colour = inked(items[i]).colour;
            CHECK((colour == black || colour == white));
        }
        CHECK(std::ranges::any_of(items.begin() + 2, items.end(),
                                  [](const DisplayItem& item) { return inked(item).colour == black; }));
    }
}

// What is thinner than a quarter of a point breaks up in print (common practice).
TEST_CASE("no stroke of a pictogram with a side of 10 mm is a hairline", "[symbols]") {
    const double scale = ghs_height(mm(10)) / symbol_height;
    for (const NamedDrawing& drawing : ghs_pictograms(false)) {
        for (const DisplayItem& item : drawing.list.items) {
            if (const auto* stroke = std::get_if<StrokePath>(&item)) CHECK(stroke->width * scale > pt(0.25));
        }
    }
}

TEST_CASE("an outline is written as path data in tenths of a millimetre", "[symbols]") {
    const Path path = drawing::outline("M 10 20 L 30 20.5 C 31 21 32 22 33 -3 Z");
    REQUIRE(path.size() == 4);
    CHECK(std::get<MoveTo>(path[0]).to == Point{mm(1), mm(2)});
    CHECK(near(std::get<LineTo>(path[1]).to.y, mm(2.05)));
    CHECK(near(std::get<CurveTo>(path[2]).control1.y, mm(2.1)));
    CHECK(near(std::get<CurveTo>(path[2]).to.x, mm(3.3)));
    CHECK(near(std::get<CurveTo>(path[2]).to.y, mm(-0.3)));
    CHECK(std::holds_alternative<ClosePath>(path[3]));
    CHECK_THROWS_AS(drawing::outline("M 10 20 l 30 20"), std::logic_error);
    CHECK_THROWS_AS(drawing::outline("M 10"), std::logic_error);
}

TEST_CASE("a symmetric shape is drawn from its right half", "[symbols]") {
    const std::vector<Point> points =
        points_of(drawing::symmetric(drawing::outline("M 50 10 L 60 20 L 55 30 L 50 30")));
    const std::vector<Point> whole =
        points_of(drawing::outline("M 50 10 L 60 20 L 55 30 L 50 30 L 45 30 L 40 20 L 50 10"));
    REQUIRE(points.size() == whole.size());
    for (std::size_t i = 0; i < points.size(); ++i) {
        CHECK(near(points[i].x, whole[i].x));
        CHECK(near(points[i].y, whole[i].y));
    }
}
