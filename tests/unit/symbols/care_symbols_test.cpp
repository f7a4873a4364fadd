#include "symbols/care_symbols.h"

#include "records/care.h"

#include "drawn.h"

#include <algorithm>
#include <set>

using namespace dyeleaf;

namespace {

std::string care(std::string_view treatment) {
    return "care/" + std::string{treatment};
}

// The bars below the figure: strokes that lie wholly below it.
std::vector<Inked> bars_of(const std::string& key) {
    std::vector<Inked> bars = inked(key);
    std::erase_if(bars, [](const Inked& one) { return one.rect.top() < mm(8); });
    return bars;
}

// What a symbol has more than another.
std::size_t more_than(const std::string& key, const std::string& other) {
    return inked(key).size() - inked(other).size();
}

} // namespace

TEST_CASE("every treatment has a drawing and every drawing a treatment", "[symbols]") {
    std::vector<std::string> treatments;
    for (const Care& treatment : care_treatments())
        treatments.emplace_back(treatment.key);
    std::vector<std::string> drawn;
    for (const NamedDrawing& drawing : care_symbols())
        drawn.push_back(drawing.name);
    CHECK(drawn == treatments);
}

TEST_CASE("a key without a drawing gives none, and the same key the same list", "[symbols]") {
    CHECK(symbol_drawing("care/boil", false) == nullptr);
    CHECK(symbol_drawing("wash 30", false) == nullptr);
    CHECK(symbol_drawing("care/wash 30", false) == symbol_drawing("care/wash 30", false));
}

TEST_CASE("care symbols are of one height and stand on one line, in black", "[symbols]") {
    for (const Care& treatment : care_treatments()) {
        INFO(treatment.key);
        const auto drawing = symbol_drawing(care(treatment.key), false);
        const auto ink = inked(care(treatment.key));
        CHECK(near(drawing->size.height, mm(10)));
        CHECK(contains({{}, drawing->size}, inked_rect(ink)));
        CHECK(std::ranges::all_of(ink, [](const Inked& one) { return one.colour == Rgb{}; }));
        // The tub, triangle, square, iron or circle comes first.
        CHECK(near(ink.front().rect.top(), mm(0.4)));
        if (treatment.key != "iron no steam") CHECK(near(ink.front().rect.bottom(), mm(8)));
    }
}

TEST_CASE("care symbols are drawn with one pen", "[symbols]") {
    for (const Care& treatment : care_treatments()) {
        if (treatment.key.starts_with("hand wash")) continue; // the fingers stand close
        for (const Inked& one : inked(care(treatment.key))) {
            INFO(treatment.key);
            const bool is_dot = one.width == Length{};
            CHECK((is_dot || near(one.width, mm(0.5))));
        }
    }
}

TEST_CASE("what is gentle differs from what is not by its bars alone", "[symbols]") {
    for (const Care& treatment : care_treatments()) {
        const std::size_t end =
            std::min({treatment.key.find(" very"), treatment.key.find(" gentle"), treatment.key.find(" ambient")});
        if (end == std::string_view::npos) continue;
        INFO(treatment.key);
        const std::string plain = dump(*symbol_drawing(care(treatment.key.substr(0, end)), false));
        CHECK(dump(*symbol_drawing(care(treatment.key), false)).starts_with(plain));
    }
}

TEST_CASE("numerals and letters stand clear of the lines around them", "[symbols]") {
    for (const Care& treatment : care_treatments()) {
        const bool is_tub = treatment.key.starts_with("wash");
        const bool is_circle = treatment.key.starts_with("dry clean") || treatment.key.starts_with("wet clean");
        if (!is_tub && !is_circle) continue;
        INFO(treatment.key);
        const auto ink = inked(care(treatment.key));
        const Rect figures = ink[is_tub ? 2 : 1].rect;
        const Rect room = is_tub ? Rect{{mm(2), ink[1].rect.bottom()}, {mm(6.4), mm(7.5) - ink[1].rect.bottom()}}
                                 : Rect{{mm(1.8), mm(1.8)}, {mm(4.8), mm(4.8)}};
        CHECK(contains(grown(room, mm(-0.2)), figures));
    }
}

// ISO 3758: one bar below for a mild process, two for a very mild one; hand wash at ambient temperature has one.
TEST_CASE("bars below say how gentle", "[symbols]") {
    for (const Care& treatment : care_treatments()) {
        INFO(treatment.key);
        const auto bars = bars_of(care(treatment.key));
        const bool very = treatment.key.ends_with("very gentle");
        const bool one = treatment.key.ends_with("gentle") || treatment.key == "hand wash ambient";
        CHECK(bars.size() == (very ? 2 : one ? 1 : 0));
        for (const Inked& bar : bars)
            CHECK(near(bar.rect.size.height, mm(0.5)));
        if (very) CHECK(near(bars[1].rect.top() - bars[0].rect.bottom(), mm(0.5)));
    }
}

TEST_CASE("the cross of “do not” spans the symbol", "[symbols]") {
    for (const Care& treatment : care_treatments()) {
        if (!treatment.key.starts_with("no ")) continue;
        INFO(treatment.key);
        const auto drawing = symbol_drawing(care(treatment.key), false);
        const auto ink = inked(care(treatment.key));
        const Rect figure = ink.front().rect;
        for (const Inked& stroke : {ink[ink.size() - 1], ink[ink.size() - 2]}) {
            CHECK(stroke.points.size() == 2);
            CHECK(near(stroke.rect.left(), mm(0)));
            CHECK(near(stroke.rect.right(), drawing->size.width));
            CHECK(contains(stroke.rect, figure));
        }
        const double one = (ink.back().points[1].x - ink.back().points[0].x).in_mm();
        const double other = (ink[ink.size() - 2].points[1].x - ink[ink.size() - 2].points[0].x).in_mm();
        CHECK(one == Approx(-other));
    }
}

// ISO 3758: dots for heat, lines for natural drying, an oblique stroke in the upper left corner for shade.
TEST_CASE("dots and lines are as many as they should be", "[symbols]") {
    const auto dots = [](const std::string& key) {
        const auto ink = inked(key);
        return std::ranges::count_if(ink, [](const Inked& one) { return one.width == Length{}; });
    };
    CHECK(dots("care/iron low") == 1);
    CHECK(dots("care/iron medium") == 2);
    CHECK(dots("care/iron high") == 3);
    CHECK(dots("care/iron no steam") == 0);
    CHECK(dots("care/tumble low") == 1);
    CHECK(dots("care/tumble normal") == 2);
    CHECK(dots("care/no tumble") == 0);

    CHECK(inked("care/dry line")[1].points.size() == 2);
    CHECK(inked("care/dry drip line")[1].points.size() == 4);
    CHECK(near(inked("care/dry line")[1].rect.size.width, mm(0.5)));
    CHECK(near(inked("care/dry flat")[1].rect.size.height, mm(0.5)));
    CHECK(inked("care/dry drip flat")[1].points.size() == 4);
    for (const char* const drying : {"dry line", "dry drip line", "dry flat", "dry drip flat"}) {
        const std::string shaded = care(drying) + " shade";
        CHECK(more_than(shaded, care(drying)) == 1);
        const Rect stroke = inked(shaded).back().rect;
        const Rect square = inked(shaded).front().rect;
        CHECK(near(stroke.left(), square.left()));
        CHECK(near(stroke.top(), square.top()));
        CHECK(stroke.right() < square.centre().x);
    }
    CHECK(inked("care/oxygen bleach")[1].points.size() == 4);
}

TEST_CASE("the lines in the triangle run parallel to its side, from its foot to the other side", "[symbols]") {
    const auto triangle = inked("care/oxygen bleach")[0].points;
    const auto lines = inked("care/oxygen bleach")[1].points;
    const auto slope = [](Point from, Point to) { return (to.y - from.y) / (to.x - from.x); };
    const double left = slope(triangle[2], triangle[0]);
    CHECK(slope(lines[0], lines[1]) == Approx(left).epsilon(0.01));
    CHECK(slope(lines[2], lines[3]) == Approx(left).epsilon(0.01));
    for (const Point end : {lines[1], lines[3]})
        CHECK(slope(triangle[0], end) == Approx(slope(triangle[0], triangle[1])).epsilon(0.01));
}

TEST_CASE("iron without steam has two jets below the sole, and a cross over them alone", "[symbols]") {
    const auto ink = inked("care/iron no steam");
    REQUIRE(ink.size() == 3);
    CHECK(ink[1].points.size() == 4);
    CHECK(ink[2].points.size() == 4);
    for (std::size_t i = 1; i < 3; ++i)
        CHECK(ink[i].rect.top() > ink[0].rect.bottom());
}

TEST_CASE("no two symbols are alike", "[symbols]") {
    std::set<std::string> seen;
    for (const NamedDrawing& drawing : care_symbols()) {
        INFO(drawing.name);
        std::string all;
        for (const Inked& one : inked("care/" + drawing.name)) {
            for (const Point p : one.points)
                all += to_string(p.x) + to_string(p.y);
        }
        CHECK(seen.insert(all).second);
    }
}
