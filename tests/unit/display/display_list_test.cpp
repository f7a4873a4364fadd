#include "display/display_list.h"

#include <catch2/catch.hpp>

#include <cmath>

using namespace dyeleaf;

namespace {

// A point of the curve that starts at `from`, at `t` of its way.
Point along(Point from, const CurveTo& curve, double t) {
    const double u = 1 - t;
    const auto blend = [&](Length a, Length b, Length c, Length d) {
        return a * (u * u * u) + b * (3 * u * u * t) + c * (3 * u * t * t) + d * (t * t * t);
    };
    return {blend(from.x, curve.control1.x, curve.control2.x, curve.to.x),
            blend(from.y, curve.control1.y, curve.control2.y, curve.to.y)};
}

double distance_mm(Point a, Point b) {
    return std::hypot((a.x - b.x).in_mm(), (a.y - b.y).in_mm());
}

} // namespace

TEST_CASE("a circle stays on its radius all the way round", "[display]") {
    const Point centre{mm(12), mm(7)};
    Point at;
    int curves = 0;
    for (const auto& step : circle_path(centre, mm(10))) {
        if (const auto* move = std::get_if<MoveTo>(&step)) at = move->to;
        const auto* curve = std::get_if<CurveTo>(&step);
        if (curve == nullptr) continue;
        for (double t = 0; t <= 1; t += 0.05) {
            CHECK(distance_mm(along(at, *curve, t), centre) == Approx(10).epsilon(0.0003));
        }
        at = curve->to;
        ++curves;
    }
    CHECK(curves == 4);
    CHECK(distance_mm(at, centre + Point{mm(10), {}}) == Approx(0).margin(1e-9));
}

TEST_CASE("rounded corners are never larger than half the shorter side", "[display]") {
    const auto corner = [](Length radius) {
        const Path path = rounded_path({{mm(1), mm(2)}, {mm(30), mm(8)}}, radius);
        return std::get<MoveTo>(path.front()).to;
    };
    CHECK(near(corner(mm(3)).x, mm(4)));
    CHECK(near(corner(mm(50)).x, mm(5)));
    CHECK(rounded_path({{}, {mm(30), mm(8)}}, mm(0)).size() == rect_path({{}, {mm(30), mm(8)}}).size());
}

TEST_CASE("a dump has one line an item and indents what a group holds", "[display]") {
    const Rgb white{1, 1, 1};
    auto run = std::make_shared<ShapedRun>();
    run->text = "Oak \"old\"";

    DisplayList inner{{mm(10), mm(5)}, {}};
    inner.items.push_back(DrawRun{run, {mm(5), mm(12.4)}, pt(9), {}});

    DisplayList list{{mm(70), mm(40)}, {}};
    list.items.push_back(FillPath{rect_path({{}, {mm(70), mm(40)}}), white});
    list.items.push_back(StrokePath{line_path({mm(1), mm(2)}, {mm(4), mm(2)}), {}, mm(0.2), {mm(2), mm(1)}});
    list.items.push_back(StrokePath{line_path({mm(1), mm(3)}, {mm(4), mm(3)}), {}, mm(0.2), {}, true});
    list.items.push_back(FillPath{circle_path({mm(5), mm(5)}, mm(2)), white});
    list.items.push_back(DrawPicture{{"logo.png", PictureKind::png, {9, 9}, 1, 1}, {{mm(1), mm(1)}, {mm(9), mm(9)}}});
    list.items.push_back(Group{std::make_shared<DisplayList>(inner), Transform::move({mm(3), mm(4)}), {}});
    list.items.push_back(
        Group{std::make_shared<DisplayList>(inner), turned(Turn::right, inner.size), rect_path({{}, {mm(10), mm(5)}})});

    CHECK(dump(list) == R"(fill 0,0 70x40 #ffffff
stroke 1,2 3x0 #000000 0.2mm dash 2,1
stroke 1,3 3x0 #000000 0.2mm round
fill 3,3 4x4 #ffffff
picture 1,1 9x9 "logo.png"
group move 3,4
  text 5,12.4 "Oak \"old\"" 9pt #000000
group turn 0,1,-1,0 move 5,0 clip 0,0 10x5
  text 5,12.4 "Oak \"old\"" 9pt #000000
)");
}

// sRGB red has a relative luminance of 0.2126 (IEC 61966-2-1), which codes as #7f7f7f.
TEST_CASE("everything turns grey, as light as it was", "[display]") {
    DisplayList inner{{mm(1), mm(1)}, {}};
    inner.items.emplace_back(StrokePath{line_path({}, {mm(1), mm(1)}), Rgb{1, 0, 0}, mm(1), {}});
    DisplayList list{{mm(2), mm(2)}, {}};
    list.items.emplace_back(FillPath{rect_path({{}, {mm(1), mm(1)}}), Rgb{1, 1, 1}});
    list.items.emplace_back(DrawPicture{{"a.png", PictureKind::png, {9, 9}, 1, 1}, {}});
    list.items.emplace_back(Group{std::make_shared<const DisplayList>(inner), {}, {}});
    const DisplayList grey = in_grey(list);
    CHECK(to_hex(std::get<FillPath>(grey.items.at(0)).colour) == "#ffffff");
    CHECK(std::get<DrawPicture>(grey.items.at(1)).grey);
    const auto& group = std::get<Group>(grey.items.at(2));
    CHECK(to_hex(std::get<StrokePath>(group.list->items.at(0)).colour) == "#7f7f7f");
    CHECK(std::get<StrokePath>(inner.items.at(0)).colour == Rgb{1, 0, 0});
}

TEST_CASE("what is read aloud is the words of every part, and nothing else", "[display]") {
    const auto run = [](const char* text) {
        auto shaped = std::make_shared<ShapedRun>();
        shaped->text = text;
        return shaped;
    };
    auto turned = std::make_shared<DisplayList>();
    turned->items = {BeginTag{}, DrawRun{run("Lot 26-117"), {}, pt(9), {}}, EndTag{}};
    DisplayList list;
    list.items = {BeginTag{{Tag::Role::paragraph, "", "", {}}},
                  DrawRun{run("Hedge "), {mm(1), mm(4)}, pt(9), {}},
                  DrawRun{run("in"), {mm(9), mm(4)}, pt(9), {}},
                  DrawRun{run("October"), {mm(1), mm(9)}, pt(9), {}},
                  EndTag{},
                  DrawRun{run("100 mm"), {}, pt(5), {}},
                  BeginTag{{Tag::Role::figure, "Sloe at 2 %", "", {}}},
                  FillPath{},
                  EndTag{},
                  Group{turned, {}, {}}};
    CHECK(reading_text(list) == "Hedge in October\nSloe at 2 %\nLot 26-117\n");
    CHECK(dump(list).find("begin figure \"Sloe at 2 %\"\nfill") != std::string::npos);
}
