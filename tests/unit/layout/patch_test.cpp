// What colour patches look like with every kind of ink: hues stay apart, and so do recorded, estimated and unknown.
#include "colour/contrast.h"
#include "colour/spaces.h"
#include "layout/hue_pattern.h"
#include "layout/patch.h"

#include <catch2/catch.hpp>

#include <cmath>
#include <set>

using namespace dyeleaf;

namespace {

constexpr Rect place{{mm(2), mm(3)}, {mm(13), mm(6)}};
constexpr Ink plain{};
constexpr Ink mono{true, false};
constexpr Ink sparing{false, true};

std::string drawn(Patch::Kind kind, Rgb colour, Ink ink, bool is_bare = true) {
    DisplayList list{{mm(20), mm(20)}, draw_patch({kind, colour, "described"}, {ink, is_bare}, place, place, mm(1))};
    std::string text = dump(list);
    // The dump tells of each path's bounds alone.
    for (const DisplayItem& item : list.items) {
        if (const auto* stroke = std::get_if<StrokePath>(&item)) text += std::to_string(stroke->path.size()) + " ";
        if (const auto* filled = std::get_if<FillPath>(&item)) text += std::to_string(filled->path.size()) + " ";
    }
    return text;
}

// The directions of a pattern's strokes, in degrees: 0 level, 90 upright, 45 falling to the right, -45 rising; dots, as
// short as strokes can be, have none.
std::set<int> directions(Rgb colour) {
    std::set<int> found;
    for (const DisplayItem& item : hue_pattern(colour, place.size, {}, mm(0.2)).items) {
        const Path& path = std::get<StrokePath>(item).path;
        for (std::size_t i = 0; i + 1 < path.size(); i += 2) {
            const Point from = std::get<MoveTo>(path[i]).to;
            const Point by = std::get<LineTo>(path[i + 1]).to - from;
            if (std::hypot(by.x.in_mm(), by.y.in_mm()) < 0.1) {
                found.insert(360);
            } else {
                found.insert(static_cast<int>(std::lround(std::atan2(by.y.in_mm(), by.x.in_mm()) * 180 / 3.14159265)));
            }
        }
    }
    return found;
}

} // namespace

TEST_CASE("each family of hues has the strokes of its heraldic hatching", "[layout]") {
    constexpr int dots = 360;
    CHECK(directions({0.80, 0.30, 0.27}) == std::set{90});       // red
    CHECK(directions({0.33, 0.50, 0.78}) == std::set{0});        // blue
    CHECK(directions({0.37, 0.62, 0.35}) == std::set{45});       // green
    CHECK(directions({0.58, 0.42, 0.75}) == std::set{-45});      // violet
    CHECK(directions({0.84, 0.72, 0.25}) == std::set{dots});     // yellow
    CHECK(directions({0.10, 0.10, 0.10}) == std::set{0, 90});    // black
    CHECK(directions({0.85, 0.50, 0.66}) == std::set{90, -45});  // pink: red and violet
    CHECK(directions({0.85, 0.52, 0.25}) == std::set{90, dots}); // orange: red and yellow
    CHECK(directions({0.25, 0.64, 0.64}) == std::set{0, 45});    // turquoise: blue and green
    CHECK(directions({0.70, 0.70, 0.70}).empty());               // light grey
}

TEST_CASE("a red and a green that are the same grey differ by their pattern alone", "[layout]") {
    constexpr Rgb red{0.80, 0.30, 0.27};
    const Rgb green{0.2, 0.5, 0.2};
    const double gap = std::abs(in_grey(red).red - in_grey(green).red);
    REQUIRE(gap < 0.04); // nobody sees that on paper
    CHECK(directions(red) != directions(green));
    CHECK(drawn(Patch::Kind::recorded, red, mono) != drawn(Patch::Kind::recorded, green, mono));
}

TEST_CASE("sparing ink fills nothing", "[layout]") {
    for (const auto kind :
         {Patch::Kind::recorded, Patch::Kind::estimated, Patch::Kind::not_recorded, Patch::Kind::not_printable}) {
        CHECK(drawn(kind, {0.8, 0.3, 0.3}, sparing).find("fill") == std::string::npos);
        CHECK(drawn(kind, {0.8, 0.3, 0.3}, sparing).find("stroke") != std::string::npos);
    }
    CHECK(drawn(Patch::Kind::recorded, {0.8, 0.3, 0.3}, plain).find("fill") != std::string::npos);
}

TEST_CASE("the four kinds of patch look different with every ink", "[layout]") {
    for (const Ink ink : {plain, mono, sparing, Ink{true, true}}) {
        std::set<std::string> looks;
        for (const auto kind :
             {Patch::Kind::recorded, Patch::Kind::estimated, Patch::Kind::not_recorded, Patch::Kind::not_printable})
            looks.insert(drawn(kind, {0.5, 0.4, 0.7}, ink));
        CHECK(looks.size() == 4);
    }
}

TEST_CASE("words on a patch are not crossed by its pattern, and stand on what is there", "[layout]") {
    constexpr Rgb blue{0.2, 0.3, 0.7};
    CHECK(drawn(Patch::Kind::recorded, blue, mono, false) == drawn(Patch::Kind::recorded, blue, plain, false));
    CHECK(drawn(Patch::Kind::recorded, blue, sparing, false).find("group") == std::string::npos);
    const Patch patch{Patch::Kind::recorded, blue, ""};
    CHECK(ground_of(patch, mono) == blue);
    CHECK(ground_of(patch, sparing) == Rgb{1, 1, 1});
}

TEST_CASE("patches that black ink could be taken for have a light line inside their edge", "[layout]") {
    const auto strokes = [](Rgb colour) {
        int count = 0;
        for (const DisplayItem& item :
             draw_patch({Patch::Kind::recorded, colour, "described"}, {plain, true}, place, place, mm(1))) {
            const auto* stroke = std::get_if<StrokePath>(&item);
            if (stroke == nullptr) continue;
            ++count;
            CHECK(contrast_ratio(stroke->colour, colour) >= 3); // WCAG 2.1, 1.4.11
            CHECK(stroke->width >= pt(0.5));
        }
        return count;
    };
    CHECK(strokes(Rgb{}) == 1);
    CHECK(strokes(to_rgb(Lab{19, 2, -4}).colour) == 1);
    CHECK(strokes(to_rgb(Lab{21, 2, -4}).colour) == 0);
}

TEST_CASE("a colour beyond print carries a + with every ink, and nothing may stand on it", "[layout]") {
    Patch patch{Patch::Kind::recorded, {0.0, 0.46, 0.67}, "described"};
    for (const Ink ink : {plain, mono, sparing, Ink{true, true}}) {
        patch.beyond_print = false;
        const std::size_t unmarked = draw_patch(patch, {ink, true}, place, place, mm(1)).size();
        patch.beyond_print = true;
        const auto marked = draw_patch(patch, {ink, true}, place, place, mm(1));
        REQUIRE(marked.size() > unmarked);
        const auto* plus = std::get_if<StrokePath>(&marked.back());
        REQUIRE(plus != nullptr);
        CHECK(contrast_ratio(plus->colour, ground_of(patch, ink)) >= 4.5); // WCAG 2.1, 1.4.3
    }
    REQUIRE(marks_on(patch, place).size() == 1);
    CHECK(contains(place, marks_on(patch, place).front()));
    patch.kind = Patch::Kind::estimated;
    CHECK(marks_on(patch, place).size() == 2);
}
