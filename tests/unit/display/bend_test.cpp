#include "display/bend.h"

#include <catch2/catch.hpp>

#include <cmath>
#include <numbers>
#include <set>

using namespace dyeleaf;

namespace {

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

// Points all along a path without its closing line.
std::vector<Point> points_of(const Path& path) {
    std::vector<Point> points;
    Point at;
    for (const auto& step : path) {
        if (const auto* move = std::get_if<MoveTo>(&step)) at = move->to;
        if (const auto* line = std::get_if<LineTo>(&step)) {
            for (int i = 0; i <= 10; ++i)
                points.push_back({at.x + (line->to.x - at.x) * (i / 10.0), at.y + (line->to.y - at.y) * (i / 10.0)});
            at = line->to;
        }
        if (const auto* curve = std::get_if<CurveTo>(&step)) {
            for (int i = 0; i <= 10; ++i)
                points.push_back(along(at, *curve, i / 10.0));
            at = curve->to;
        }
    }
    return points;
}

Sector sector(bool below = true) {
    return {mm(176.78), mm(247.49), 50.91 * std::numbers::pi / 180, below};
}

// Letters of half an em, by their words.
DrawRun run_of(const std::string& text, Point baseline, Length size, Length anchor) {
    auto run = std::make_shared<ShapedRun>();
    run->text = text;
    for (std::size_t i = 0; i < text.size(); ++i) {
        run->glyphs.push_back({static_cast<std::uint32_t>(text[i]), static_cast<double>(i) * 0.5, 0});
        run->clusters.push_back({1, 1});
    }
    run->width = static_cast<double>(text.size()) * 0.5;
    return {run, baseline, size, Rgb{}, anchor};
}

std::vector<DrawRun> letters_in(const DisplayList& list) {
    std::vector<DrawRun> letters;
    for (const DisplayItem& item : list.items) {
        if (const auto* draw = std::get_if<DrawRun>(&item)) letters.push_back(*draw);
    }
    return letters;
}

// Where the middle of a letter stands on its baseline.
Point foot(const DrawRun& letter) {
    const Length half = letter.size * letter.run->width / 2;
    return letter.baseline + Point{half * std::cos(letter.turn), half * std::sin(letter.turn)};
}

} // namespace

TEST_CASE("level lines become arcs, upright ones radii", "[display]") {
    const Sector bow = sector(GENERATE(true, false));
    const Size flat = bow.flat();
    for (const Length y : {Length{}, flat.height / 3, flat.height}) {
        for (const Point p : points_of(bend(line_path({{}, y}, {flat.width, y}), bow)))
            CHECK(distance_mm(p, bow.centre()) == Approx(bow.radius_at(y).in_mm()).margin(1e-4));
    }
    const Path upright = bend(line_path({mm(10), {}}, {mm(10), flat.height}), bow);
    REQUIRE(upright.size() == 2);
    CHECK(distance_mm(std::get<MoveTo>(upright[0]).to, bow.at({mm(10), {}})) < 1e-9);
    CHECK(distance_mm(std::get<LineTo>(upright[1]).to, bow.at({mm(10), flat.height})) < 1e-9);
}

TEST_CASE("a rectangle becomes a closed piece of a ring", "[display]") {
    const Sector bow = sector();
    const Size flat = bow.flat();
    const Path path = bend(rect_path({{}, flat}), bow);
    CHECK(std::holds_alternative<ClosePath>(path.back()));
    double least = 1e9, most = 0;
    for (const Point p : points_of(path)) {
        least = std::min(least, distance_mm(p, bow.centre()));
        most = std::max(most, distance_mm(p, bow.centre()));
    }
    CHECK(least == Approx(bow.inner.in_mm()).margin(1e-3));
    CHECK(most == Approx(bow.outer.in_mm()).margin(1e-3));
}

TEST_CASE("curves and slanting lines lie where each of their points is bent to", "[display]") {
    const Sector bow = sector();
    const Path circle = circle_path({mm(60), mm(30)}, mm(20));
    const Path bent = bend(circle, bow);
    // Each point of the bent curve is near the image of one of the flat curve.
    std::vector<Point> images;
    Point at;
    for (const auto& step : circle) {
        if (const auto* move = std::get_if<MoveTo>(&step)) at = move->to;
        if (const auto* curve = std::get_if<CurveTo>(&step)) {
            for (int i = 0; i <= 4000; ++i)
                images.push_back(bow.at(along(at, *curve, i / 4000.0)));
            at = curve->to;
        }
    }
    for (const Point p : points_of(bent)) {
        double nearest = 1e9;
        for (const Point image : images)
            nearest = std::min(nearest, distance_mm(p, image));
        CHECK(nearest < 0.006); // half the distance of two images, and a thousandth
    }
}

TEST_CASE("letters stand on the arc, evenly and upright to it", "[display]") {
    const bool below = GENERATE(true, false);
    const Sector bow = sector(below);
    const Length size = mm(5);
    const double part = GENERATE(0.1, 0.5, 0.9);
    const Length y = bow.flat().height * part;
    const Point start{mm(20), y};
    const DisplayList bent = bend({bow.flat(), {run_of("MINIMUM", start, size, start.x)}}, bow);
    CHECK(bent.size == bow.bounds());
    const auto letters = letters_in(bent);
    REQUIRE(letters.size() == 7);
    const double radius = bow.radius_at(y).in_mm();
    const double closest = below ? radius : radius - 0.7 * 5;
    for (std::size_t i = 0; i < letters.size(); ++i) {
        const Point from = foot(letters[i]) - bow.centre();
        CHECK(std::hypot(from.x.in_mm(), from.y.in_mm()) == Approx(radius).margin(1e-6));
        const double angle = std::atan2(from.x.in_mm(), below ? -from.y.in_mm() : from.y.in_mm());
        CHECK(letters[i].turn == Approx(below ? angle : -angle).margin(1e-6));
        // The line hangs on its start; each letter is half an em further, at the radius where they stand closest.
        const double expected = std::abs(bow.turn_at(start.x)) * -1 + (static_cast<double>(i) * 2.5 + 1.25) / closest;
        CHECK(angle == Approx(expected).margin(1e-6));
        CHECK(letters[i].size == size);
        for (std::size_t k = 0; k < i; ++k)
            CHECK_FALSE(overlap(letter_box(letters[i]), letter_box(letters[k])));
    }
}

TEST_CASE("a line that fills the flat label stays inside the bent one", "[display]") {
    const bool below = GENERATE(true, false);
    const Sector bow = sector(below);
    const Length size = bow.flat().width / 10; // twenty letters of half an em
    for (const Length anchor : {Length{}, bow.flat().width / 2, bow.flat().width}) {
        const Length y = GENERATE(as<Length>{}, mm(25), mm(40), mm(70));
        const DisplayList bent = bend({bow.flat(), {run_of("ABCDEFGHIJKLMNOPQRST", {{}, y}, size, anchor)}}, bow);
        for (const DrawRun& letter : letters_in(bent)) {
            const Point from = foot(letter) - bow.centre();
            const double angle = std::atan2(from.x.in_mm(), below ? -from.y.in_mm() : from.y.in_mm());
            CHECK(std::abs(angle) + letter.size.in_mm() / 4 / 250 <= bow.angle / 2);
        }
    }
}

TEST_CASE("each word of a bent text is spelled out, in one part with the others", "[display]") {
    const Sector bow = sector();
    const Tag paragraph{Tag::Role::paragraph, {}, "mailto:a@b.example", {}};
    const DisplayList bent = bend({bow.flat(),
                                   {BeginTag{paragraph}, run_of("NOT FOOD", {mm(5), mm(10)}, mm(4), mm(5)),
                                    run_of("at all", {mm(5), mm(16)}, mm(4), mm(5)), EndTag{}}},
                                  bow);
    std::vector<Tag> tags;
    for (const DisplayItem& item : bent.items) {
        if (const auto* begin = std::get_if<BeginTag>(&item)) tags.push_back(begin->tag);
    }
    REQUIRE(tags.size() == 6);
    const std::vector<std::string> words = {"NOT", "", "FOOD ", "at", "", "all"};
    for (std::size_t i = 0; i < tags.size(); ++i) {
        CHECK(tags[i].words == words[i]);
        CHECK(tags[i].spelled == !words[i].empty());
        CHECK(tags[i].joined == (i > 0));
        CHECK(tags[i].target == paragraph.target);
        CHECK(tags[i].place.size.width > Length{});
    }
    CHECK(reading_text(bent) == "NOT FOOD at all\n");
}

TEST_CASE("a code to scan is turned as it is, with its ground and its digits", "[display]") {
    const Sector bow = sector();
    const Rect place{{mm(100), mm(20)}, {mm(10), mm(10)}};
    FillPath modules{rect_path(grown(place, mm(-1))), Rgb{}};
    modules.dot = mm(0.2);
    const DrawRun digits = run_of("1", {mm(104), mm(29)}, mm(2), {});
    const DisplayList bent = bend({bow.flat(),
                                   {BeginTag{{Tag::Role::figure, "Barcode: 1", "https://quillmoor.example", place}},
                                    FillPath{rect_path(place), Rgb{1, 1, 1}}, modules, digits, EndTag{}}},
                                  bow);
    REQUIRE(bent.items.size() == 3);
    const auto& group = std::get<Group>(bent.items[1]);
    REQUIRE(group.list->items.size() == 3);
    CHECK(std::get<FillPath>(group.list->items[1]).path.size() == modules.path.size());
    CHECK(std::get<DrawRun>(group.list->items[2]).baseline == digits.baseline);
    CHECK(std::atan2(group.transform.b, group.transform.a) == Approx(bow.turn_at(mm(105))));
    CHECK(distance_mm(group.transform.apply({mm(105), mm(25)}), bow.at({mm(105), mm(25)})) < 1e-9);
    // What is clicked on lies there too.
    const Rect clicked = std::get<BeginTag>(bent.items[0]).tag.place;
    CHECK(distance_mm(clicked.centre(), bow.at({mm(105), mm(25)})) < 1e-9);
    CHECK(std::holds_alternative<EndTag>(bent.items[2]));
}

TEST_CASE("a pattern follows the arc with the outline that it fills", "[display]") {
    const Sector cone = sector();
    auto lines = std::make_shared<DisplayList>(DisplayList{{mm(20), mm(8)}, {}});
    lines->items.emplace_back(StrokePath{line_path({mm(3), {}}, {mm(3), mm(8)}), Rgb{}, mm(0.2), {}});
    const Rect patch{{mm(30), mm(10)}, {mm(20), mm(8)}};
    DisplayList flat{cone.flat(), {}};
    flat.items.emplace_back(Group{lines, Transform::move(patch.origin), rect_path({{}, patch.size})});
    flat.items.emplace_back(StrokePath{rect_path(patch), Rgb{}, mm(0.2), {}});
    flat.items.emplace_back(StrokePath{line_path({mm(33), mm(10)}, {mm(33), mm(18)}), Rgb{}, mm(0.2), {}});

    const DisplayList bent = bend(flat, cone);
    REQUIRE(bent.items.size() == 3);
    const auto& group = std::get<Group>(bent.items[0]);
    const auto same = [](const Path& one, const Path& other) {
        const auto a = points_of(one);
        const auto b = points_of(other);
        REQUIRE(a.size() == b.size());
        for (std::size_t i = 0; i < a.size(); ++i)
            CHECK(distance_mm(a[i], b[i]) < 1e-6);
    };
    CHECK(distance_mm(group.transform.apply({mm(1), mm(2)}), {mm(1), mm(2)}) < 1e-9);
    same(*group.clip, std::get<StrokePath>(bent.items[1]).path);
    same(std::get<StrokePath>(group.list->items[0]).path, std::get<StrokePath>(bent.items[2]).path);
}

TEST_CASE("drawings are turned as they are", "[display]") {
    const Sector bow = sector();
    auto square = std::make_shared<DisplayList>();
    square->size = {mm(10), mm(10)};
    square->items.emplace_back(FillPath{rect_path({{}, square->size}), Rgb{}});
    const Point origin{mm(100), mm(20)};
    const DisplayList bent = bend({bow.flat(), {Group{square, Transform::move(origin), std::nullopt}}}, bow);
    REQUIRE(bent.items.size() == 1);
    const auto& group = std::get<Group>(bent.items[0]);
    CHECK(group.list == square);
    const Transform& t = group.transform;
    CHECK(t.a * t.d - t.b * t.c == Approx(1));
    CHECK(t.a == Approx(t.d));
    CHECK(t.b == Approx(-t.c));
    CHECK(std::atan2(t.b, t.a) == Approx(bow.turn_at(mm(105))));
    CHECK(distance_mm(t.apply({mm(5), mm(5)}), bow.at({mm(105), mm(25)})) < 1e-9);
}
