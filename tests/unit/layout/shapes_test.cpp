// Labels that are not rectangles: what they refuse, and where their ink comes to lie.
#include "design/read_design.h"
#include "display/bend.h"
#include "english.h"
#include "layout/layout.h"
#include "project_folder.h"
#include "sample_records.h"
#include "setting.h"

#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>

using namespace dyeleaf;

namespace {

struct Made {
    std::vector<std::string> complaints;
    std::optional<LabelSize> size;
    PlacedLabel label;
};

Made made(const std::string& layout, const Records& records = sample_records()) {
    Diagnostics diagnostics;
    Made result;
    const auto file = std::make_shared<const SourceFile>(SourceFile{"test.yaml", layout});
    const auto node = parse_document(file, diagnostics);
    REQUIRE(node);
    const auto design = read_design(*node, {}, typesetter().families(), diagnostics);
    if (design) {
        const auto items = make_items(records, design->items, design->grouping, {}, printing, diagnostics);
        REQUIRE_FALSE(items.empty());
        result.size = label_size(*design, items.front(), diagnostics);
        if (result.size) result.label = place_label(*design, items.front(), *result.size, typesetter(), diagnostics);
    }
    for (const Diagnostic& diagnostic : diagnostics.sorted())
        result.complaints.push_back(diagnostic.message);
    return result;
}

bool says(const Made& label, const std::string& words) {
    return std::ranges::any_of(label.complaints,
                               [&](const std::string& one) { return one.find(words) != std::string::npos; });
}

void collect(const DisplayList& list, const Transform& transform, std::vector<Quad>& letters) {
    for (const DisplayItem& item : list.items) {
        if (const auto* group = std::get_if<Group>(&item))
            collect(*group->list, transform.after(group->transform), letters);
        const auto* draw = std::get_if<DrawRun>(&item);
        if (draw == nullptr || draw->run->text == " ") continue;
        Quad letter = letter_box(*draw);
        for (Point& corner : letter.corners)
            corner = transform.apply(corner);
        letters.push_back(letter);
    }
}

std::vector<Quad> letters_of(const Made& made) {
    std::vector<Quad> letters;
    collect(*made.label.front, {}, letters);
    return letters;
}

const std::string jar_label = "layout: t\nfor: jars\n"
                              "shape: {width: 100 mm, height: 60 mm, safe: 1 mm, arc: jar.wrap.arc}\n"
                              "styles: {body: {font: Inter, size: 8 pt}}\n"
                              "front:\n  column:\n    padding: 2 mm\n    gap: 1 mm\n    holds:\n"
                              "      - {caution: not-food, align: centre, style: {like: body}}\n"
                              "      - {caution: dust, style: {like: body}}\n"
                              "      - {caution: airtight, align: end, style: {like: body}}\n"
                              "      - {caution: hazards, style: {like: body}}\n";

} // namespace

TEST_CASE("every letter of a bent label lies on it, and none on another", "[layout]") {
    Records records = sample_records();
    const auto [top, bottom] = GENERATE(table<double, double>({{70, 50}, {50, 70}, {60, 50}}));
    records.jars.front().girth = {Girth::By::diameter, mm(top), mm(bottom)};
    const Made label = made(jar_label, records);
    CHECK(label.complaints.empty());
    REQUIRE(label.size);
    REQUIRE(label.size->sector);
    const Sector& sector = *label.size->sector;
    CHECK(sector.centre_below == (top > bottom));
    CHECK(label.size->size == sector.bounds());
    CHECK((sector.radius_at(mm(30)) * sector.angle).in_mm() == Approx(100)); // as wide as asked for, in the middle
    const auto letters = letters_of(label);
    CHECK(letters.size() > 100);
    for (std::size_t i = 0; i < letters.size(); ++i) {
        for (const Point corner : letters[i].corners) {
            const Point from = corner - sector.centre();
            const double radius = std::hypot(from.x.in_mm(), from.y.in_mm());
            const double down = sector.centre_below ? -from.y.in_mm() : from.y.in_mm();
            CHECK(radius > sector.inner.in_mm() + 1);
            CHECK(radius < sector.outer.in_mm() - 1);
            CHECK(std::abs(std::atan2(from.x.in_mm(), down)) * radius < sector.angle / 2 * radius - 1);
        }
        for (std::size_t k = 0; k < i; ++k)
            CHECK_FALSE(overlap(letters[i], letters[k]));
    }
}

TEST_CASE("a straight wall leaves the label a rectangle", "[layout]") {
    const Made label = made(jar_label);
    REQUIRE(label.size);
    CHECK_FALSE(label.size->sector);
    CHECK(label.size->size == Size{mm(100), mm(60)});
}

TEST_CASE("an arc too narrow for its label is refused", "[layout]") {
    const Made label = made("layout: t\nfor: dyes\nshape: {width: 100 mm, height: 60 mm, arc: 25 mm}\n"
                            "front: {text: \"{dye.name}\", style: {font: Inter}}\n");
    CHECK_FALSE(label.size);
    CHECK(says(label, "a label of 100 mm × 60 mm cannot go round an arc of 25 mm"));
}

namespace {

std::string lid(const std::string& caution, int millimetres = 40) {
    return "layout: t\nfor: jars\nshape: {round: " + std::to_string(millimetres) +
           " mm, safe: 1 mm}\nstyles: {body: {font: Inter, size: 7 pt}}\n"
           "front:\n  layers:\n    padding: 1 mm\n    holds:\n" +
           caution +
           "      - column:\n          align: centre\n          justify: centre\n          holds:\n"
           "            - {caution: airtight, brief: yes, align: centre, style: {like: body}}\n"
           "            - {caution: hazards, brief: yes, max width: 20 mm, align: centre, style: {like: body}}\n";
}

} // namespace

TEST_CASE("text on a circle stands on its radius, above and below", "[layout]") {
    const Made label = made(lid("      - {caution: not-food, around: top, style: {like: body}}\n"
                                "      - {caution: dust, brief: yes, around: bottom, style: {like: body}}\n"));
    CHECK(label.complaints.empty());
    int above = 0, below = 0;
    for (const Quad& letter : letters_of(label)) {
        const Point foot{(letter.corners[2].x + letter.corners[3].x) / 2,
                         (letter.corners[2].y + letter.corners[3].y) / 2};
        const Point head{(letter.corners[0].x + letter.corners[1].x) / 2,
                         (letter.corners[0].y + letter.corners[1].y) / 2};
        const auto from_centre = [](Point p) { return std::hypot(p.x.in_mm() - 20, p.y.in_mm() - 20); };
        if (from_centre(foot) < 12) continue; // in the middle
        const bool rainbow = from_centre(head) > from_centre(foot);
        ++(rainbow ? above : below);
        // The band is one line of 14 or 10 pt, leading 1.25, with the capitals in its middle.
        const double line = (rainbow ? 14 : 10) * 25.4 / 72;
        const double cap = 0.727; // Inter's capitals, in ems
        const double baseline = 19 - line * (1.25 + (rainbow ? cap : -cap)) / 2;
        CHECK(from_centre(foot) == Approx(baseline).margin(0.05));
    }
    CHECK(above == 7);  // NOT FOOD
    CHECK(below == 13); // Wear a dust mask
}

TEST_CASE("a caution too long for its circle is refused", "[layout]") {
    const Made label = made(lid("      - {caution: not-food, around: top, style: {like: body}}\n"
                                "      - {caution: dust, around: bottom, style: {like: body}}\n"));
    CHECK(says(label, "is too small for its cautions"));
}

TEST_CASE("a text on a circle shrinks, and is cut with a warning", "[layout]") {
    Records records = sample_records();
    records.jars.front().notes =
        "Shake it shut, then tap it gently and low over the fibre, and wipe the bench with a "
        "damp cloth before the next colour is opened, or the two of them will mix on the next skein";
    const Made label =
        made("layout: t\nfor: jars\nshape: {round: 60 mm, safe: 1 mm}\n"
             "styles: {body: {font: Inter, size: 7 pt, smallest: 6 pt}}\n"
             "front:\n  layers:\n    padding: 1 mm\n    holds:\n"
             "      - {text: \"{jar.notes}\", around: bottom, style: body}\n"
             "      - column:\n          align: centre\n          justify: centre\n          holds:\n"
             "            - {caution: not-food}\n            - {caution: dust, brief: yes}\n"
             "            - {caution: airtight, brief: yes}\n            - {caution: hazards, brief: yes}\n",
             records);
    CHECK(says(label, "does not fit at its smallest size and is cut with …"));
    CHECK_FALSE(says(label, "too small"));
}

TEST_CASE("what crosses a caution on a circle is an error", "[layout]") {
    const Made label = made(lid("      - {caution: not-food, around: top, style: {like: body}}\n"
                                "      - {caution: dust, brief: yes, around: top, style: {like: body}}\n"));
    CHECK(says(label, "the caution “NOT FOOD” is covered by the caution"));
}

TEST_CASE("an oval keeps its text inside", "[layout]") {
    const auto oval = [](const std::string& padding) {
        return made("layout: t\nfor: dyes\nshape: {width: 60 mm, height: 30 mm, round: yes, safe: 1 mm}\n"
                    "front:\n  column:\n    padding: " +
                    padding + "\n    holds: [{text: \"{dye.name}\", style: {font: Inter, size: 8 pt}}]\n");
    };
    CHECK(oval("[13 mm, 5 mm, 5 mm, 20 mm]").complaints.empty());
    // Inside the rectangle, outside the ellipse: (−26 / 29)² + (−12 / 14)² > 1.
    CHECK(says(oval("[3 mm, 3 mm, 3 mm, 4 mm]"), "comes closer than 1 mm to the edge"));
}

TEST_CASE("a clipped corner keeps its text away", "[layout]") {
    const auto tag = [](const std::string& padding) {
        return made("layout: t\nfor: dyes\nshape: {width: 40 mm, height: 60 mm, clipped: 10 mm, safe: 1 mm}\n"
                    "front:\n  column:\n    padding: " +
                    padding + "\n    holds: [{text: \"{dye.name}\", style: {font: Inter, size: 8 pt}}]\n");
    };
    CHECK(tag("[12 mm, 2 mm, 2 mm, 2 mm]").complaints.empty());
    CHECK(says(tag("[2 mm, 2 mm, 2 mm, 2 mm]"), "comes closer than 1 mm to the edge"));
}

TEST_CASE("a hole near the edge is warned of", "[layout]") {
    const auto tag = [](const std::string& x) {
        return made("layout: t\nfor: dyes\nshape: {width: 40 mm, height: 60 mm}\n"
                    "holes: [{x: " +
                    x +
                    ", y: 20 mm, diameter: 4 mm}]\n"
                    "front: {column: {padding: [30 mm, 2 mm, 2 mm, 2 mm], holds: [{text: \"{dye.name}\", style: {font: "
                    "Inter}}]}}\n");
    };
    CHECK(tag("6 mm").complaints.empty());
    CHECK(says(tag("5 mm"), "a hole of 4 mm lies less than 6 mm from the edge, and may tear out"));
}
