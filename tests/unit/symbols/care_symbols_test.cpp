#include "symbols/care_symbols.h"

#include "base/overloaded.h"
#include "records/care.h"
#include "symbols/drawn_ink.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

using namespace dyeleaf;

namespace {

const std::map<std::string, DisplayList>& drawings() {
    static const auto all = [] {
        std::map<std::string, DisplayList> lists;
        for (const auto& [name, list] : care_symbols())
            lists.emplace(name, list);
        return lists;
    }();
    return all;
}

// Below the tub and the circle.
long bars(const DisplayList& list) {
    return std::ranges::count_if(
        fills(list), [](Rect rect) { return rect.top() > mm(8) && rect.size.width > rect.size.height * 5; });
}

// Discs wider than any pen.
long dots(const DisplayList& list) {
    return std::ranges::count_if(fills(list), [](Rect rect) {
        return rect.size.width > mm(0.8) && std::abs((rect.size.width - rect.size.height).in_mm()) < 0.01;
    });
}

struct Slants {
    int upright = 0, level = 0, oblique = 0;
    friend bool operator==(Slants, Slants) = default;
};

// Straight strokes by their direction.
Slants slants(const DisplayList& list) {
    Slants found;
    for (const Line& line : strokes(list)) {
        if (line.size() != 2) continue;
        const bool upright = line[0].x == line[1].x;
        const bool level = line[0].y == line[1].y;
        ++(upright ? found.upright : level ? found.level : found.oblique);
    }
    return found;
}

bool says(const std::string& name, std::string_view word) {
    return (" " + name + " ").find(" " + std::string{word} + " ") != std::string::npos;
}

} // namespace

TEST_CASE("every care treatment has one drawing, and every drawing a treatment", "[symbols]") {
    std::vector<std::string> named;
    for (const auto& drawing : care_symbols())
        named.push_back(drawing.name);
    std::vector<std::string> recorded;
    for (const Care& care : care_treatments())
        recorded.emplace_back(care.key);
    std::ranges::sort(named);
    std::ranges::sort(recorded);
    CHECK(named == recorded);
}

TEST_CASE("care symbols are of one height, black, and inside their size", "[symbols]") {
    for (const auto& [name, list] : drawings()) {
        CAPTURE(name);
        CHECK(list.size.height == symbol_height);
        const Rect drawn = ink(list);
        CHECK(contains({{}, list.size}, drawn));
        // No empty margin beside them either: a row is spaced by who places it.
        CHECK(drawn.left() < mm(0.1));
        CHECK(list.size.width - drawn.right() < mm(0.1));
        for (const auto& item : list.items) {
            std::visit(Overloaded{[](const FillPath& fill) { CHECK(fill.colour == Rgb{}); },
                                  [](const StrokePath& stroke) { CHECK(stroke.colour == Rgb{}); },
                                  [](const auto&) { FAIL("neither filled nor stroked"); }},
                       item);
        }
    }
}

TEST_CASE("tub, triangle, square and circle stand on one line and are as high", "[symbols]") {
    for (const char* name : {"wash 40", "hand wash", "any bleach", "dry flat", "tumble low", "dry clean P"}) {
        CAPTURE(name);
        // The first item is the body's outline.
        const Rect body = around(lines_of(std::get<StrokePath>(drawings().at(name).items.at(0)).path));
        CHECK(body.top().in_mm() == Approx(0.9).margin(0.1));
        CHECK(body.bottom().in_mm() == Approx(7.5).margin(0.1));
    }
}

TEST_CASE("gentle processes have one bar below, very gentle ones two, and nothing else differs", "[symbols]") {
    for (const auto& [name, list] : drawings()) {
        CAPTURE(name);
        const long expected = says(name, "very") ? 2 : says(name, "gentle") || says(name, "ambient") ? 1 : 0;
        CHECK(bars(list) == expected);
        if (expected == 0) continue;
        const std::string normal =
            name.substr(0, std::min({name.find(" very"), name.find(" gentle"), name.find(" ambient")}));
        const std::string plain = dump(drawings().at(normal));
        CHECK(dump(list).substr(0, plain.size()) == plain);
        CHECK(list.items.size() == drawings().at(normal).items.size() + static_cast<std::size_t>(expected));
    }
}

TEST_CASE("what must not be done is crossed out from above the body to below it", "[symbols]") {
    for (const auto& [name, list] : drawings()) {
        CAPTURE(name);
        std::vector<Line> rising, falling;
        for (const Line& line : strokes(list)) {
            if (line.size() != 2 || around({line}).size.height < mm(7.5)) continue;
            const bool falls = (line[1].x > line[0].x) == (line[1].y > line[0].y);
            (falls ? falling : rising).push_back(line);
        }
        const std::size_t crosses = name.starts_with("no ") ? 1 : 0;
        CHECK(rising.size() == crosses);
        CHECK(falling.size() == crosses);
        if (rising.empty() || falling.empty()) continue;
        CHECK(around(rising) == around(falling));
        const Rect cross = around(rising);
        CHECK(cross.top() < mm(0.9));
        CHECK(cross.bottom() > mm(7.5));
        CHECK(cross.centre().x.in_mm() == Approx((list.size.width / 2).in_mm()));
    }
}

TEST_CASE("dots tell the heat of dryer and iron", "[symbols]") {
    const std::map<std::string, long> expected = {
        {"tumble low", 1}, {"tumble normal", 2}, {"iron low", 1}, {"iron medium", 2}, {"iron high", 3}};
    for (const auto& [name, list] : drawings()) {
        CAPTURE(name);
        CHECK(dots(list) == (expected.contains(name) ? expected.at(name) : 0));
    }
}

TEST_CASE("natural drying is told by lines: upright or flat, two for dripping, oblique for shade", "[symbols]") {
    for (const std::string way : {"line", "flat"}) {
        for (const bool drip : {false, true}) {
            for (const bool shade : {false, true}) {
                const std::string name = "dry " + std::string{drip ? "drip " : ""} + way + (shade ? " shade" : "");
                CAPTURE(name);
                Slants expected{2, 2, shade ? 1 : 0}; // the square itself
                (way == "line" ? expected.upright : expected.level) += drip ? 2 : 1;
                const DisplayList& list = drawings().at(name);
                CHECK(slants(list) == expected);
                if (!shade) continue;
                for (const Line& line : strokes(list)) {
                    const Rect corner = around({line});
                    if (line[0].x == line[1].x || line[0].y == line[1].y) continue;
                    CHECK(corner.right() < list.size.width / 2);
                    CHECK(corner.bottom() < mm(4.2));
                    CHECK(((line[1].x > line[0].x) != (line[1].y > line[0].y))); // it cuts the corner off
                }
            }
        }
    }
}

TEST_CASE("two parallel lines in the triangle allow oxygen only", "[symbols]") {
    CHECK(slants(drawings().at("any bleach")) == Slants{0, 1, 2});
    const DisplayList& oxygen = drawings().at("oxygen bleach");
    CHECK(slants(oxygen) == Slants{0, 1, 4});
    const std::vector<Line> lines = strokes(oxygen);
    const auto slope = [](const Line& line) { return (line.at(1).y - line.at(0).y) / (line.at(1).x - line.at(0).x); };
    REQUIRE(lines.size() == 5);
    CHECK(slope(lines[3]) == Approx(slope(lines[4])));
}

TEST_CASE("iron without steam has two jets below the sole, and a cross over them alone", "[symbols]") {
    const std::vector<Line> lines = strokes(drawings().at("iron no steam"));
    const auto below = [](const Line& line) { return around({line}).top() > mm(6); };
    CHECK(std::ranges::count_if(lines, below) == 4);
    CHECK(std::ranges::count_if(lines, [&](const Line& line) { return below(line) && line[0].x == line[1].x; }) == 2);
}

TEST_CASE("each temperature has numerals of its own in the same tub", "[symbols]") {
    std::set<std::string> numerals;
    const std::string tub = dump(drawings().at("no wash"));
    for (const char* degrees : {"30", "40", "50", "60", "70", "95"}) {
        CAPTURE(degrees);
        const DisplayList& list = drawings().at("wash " + std::string{degrees});
        DisplayList body = list;
        DisplayList inside = list;
        body.items.resize(4); // sides and water, each with its joints
        inside.items.erase(inside.items.begin(), inside.items.begin() + 4);
        CHECK(tub.starts_with(dump(body)));
        CHECK(numerals.insert(dump(inside)).second);
        CHECK(contains({{mm(2), mm(2.5)}, {list.size.width - mm(4), mm(4.5)}}, ink(inside)));
    }
}

TEST_CASE("no two care symbols are alike", "[symbols]") {
    std::set<std::string> seen;
    for (const auto& [name, list] : drawings()) {
        CAPTURE(name);
        CHECK(seen.insert(dump(list)).second);
    }
}
