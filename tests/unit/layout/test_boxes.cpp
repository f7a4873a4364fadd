// Layout boxes against rectangles worked out by hand, and what a label's checks complain about.
#include "case_text.h"
#include "design/read_design.h"
#include "english.h"
#include "layout/layout.h"
#include "project_folder.h"
#include "sample_records.h"
#include "setting.h"
#include "symbols/symbols.h"

#include <algorithm>
#include <catch2/catch.hpp>

using namespace dyeleaf;

namespace {

std::string indented(const std::string& text) {
    std::string result;
    std::size_t at = 0;
    while (at < text.size()) {
        const std::size_t end = text.find('\n', at);
        result += "  " + text.substr(at, end - at) + "\n";
        at = end + 1;
    }
    return result;
}

std::optional<Design> design_of(const std::string& text, Diagnostics& diagnostics) {
    const auto file = std::make_shared<const SourceFile>(SourceFile{"test.yaml", text});
    const auto node = parse_document(file, diagnostics);
    if (!node) return std::nullopt;
    return read_design(*node, {}, typesetter().families(), diagnostics);
}

std::string written(const Diagnostics& diagnostics) {
    std::string text;
    for (const Diagnostic& diagnostic : diagnostics.sorted())
        text += describe(diagnostic);
    return text;
}

// One label of the first item for the layout; what is complained about, in order.
std::vector<Diagnostic> complaints(const std::string& layout, const Records& records = sample_records()) {
    Diagnostics diagnostics;
    const auto design = design_of(layout, diagnostics);
    INFO(written(diagnostics));
    REQUIRE(design);
    const auto items = make_items(records, design->items, design->grouping, {}, printing, diagnostics);
    REQUIRE_FALSE(items.empty());
    const auto size = label_size(*design, items.front(), diagnostics);
    REQUIRE(size);
    place_label(*design, items.front(), *size, typesetter(), diagnostics);
    return diagnostics.sorted();
}

} // namespace

TEST_CASE("boxes lie where they should", "[layout]") {
    const auto cases = read_cases(project_folder() / "tests/cases/layout/boxes.case");
    REQUIRE(cases.size() >= 25);
    const Records records = sample_records();
    for (const CaseText& one : cases) {
        DYNAMIC_SECTION(one.name) {
            const std::size_t cut = one.body.find("--- boxes\n");
            REQUIRE(cut != std::string::npos);
            Diagnostics diagnostics;
            const auto design = design_of("layout: t\nfor: dyes\nshape: {width: 60 mm, height: 40 mm}\nfront:\n" +
                                              indented(one.body.substr(0, cut)),
                                          diagnostics);
            INFO(written(diagnostics));
            REQUIRE(design);
            const auto items = make_items(records, ItemKind::dyes, {}, {}, printing, diagnostics);
            std::string expected = one.body.substr(cut + 10);
            while (expected.ends_with("\n\n"))
                expected.pop_back();
            CHECK(dump_boxes(*design, items.front(), {mm(60), mm(40)}, typesetter()) == expected);
        }
    }
}

TEST_CASE("a long text shrinks, then is cut with a warning that names record and text", "[layout]") {
    Records records = sample_records();
    const std::string layout =
        "layout: t\nfor: dyes\nshape: {width: 40 mm, height: 20 mm}\n"
        "front: {text: \"{dye.name}\", style: {font: Inter, size: 12 pt, smallest: 8 pt, lines: 1}}\n";
    SECTION("it fits") {
        CHECK(complaints(layout, records).empty());
    }
    SECTION("it fits once shrunk") {
        records.dyes[0].name = "Hedge in late October";
        CHECK(complaints(layout, records).empty());
    }
    SECTION("it does not fit") {
        records.dyes[0].name = "A colour that was named on a long and very wet afternoon in October";
        const auto found = complaints(layout, records);
        REQUIRE(found.size() == 1);
        CHECK(found[0].severity == Severity::warning);
        CHECK(found[0].message == "“sloe”: the text “A colour that was named on a long and ve…” does not fit at its "
                                  "smallest size and is cut with …");
    }
}

TEST_CASE("a word that is broken is a warning", "[layout]") {
    Records records = sample_records();
    records.dyes[0].name = "Unpronounceablycompoundedcolourname";
    const auto found = complaints("layout: t\nfor: dyes\nshape: {width: 20 mm, height: 20 mm}\n"
                                  "front: {text: \"{dye.name}\", style: {font: Inter, size: 12 pt, smallest: 9 pt}}\n",
                                  records);
    REQUIRE(found.size() == 1);
    CHECK(found[0].severity == Severity::warning);
    CHECK(found[0].message.ends_with("is broken inside a word, even at its smallest size"));
}

TEST_CASE("a character that no font has is a warning that names it", "[layout]") {
    Records records = sample_records();
    records.dyes[0].name = "Sloe 🧶";
    const auto found = complaints("layout: t\nfor: dyes\nshape: {width: 40 mm, height: 20 mm}\n"
                                  "front: {text: \"{dye.name}\", style: {font: Inter}}\n",
                                  records);
    REQUIRE(found.size() == 1);
    CHECK(found[0].severity == Severity::warning);
    CHECK(found[0].message == "“sloe”: no font has “🧶” in “Sloe 🧶”; it is left out");
}

namespace {

// A jar label of 80 × 60 mm that carries every caution, with `extra` put in before them.
std::string jar_layout(const std::string& shape, const std::string& extra) {
    return "layout: t\nfor: jars\nshape: {" + shape + "}\n" +
           "styles: {body: {font: Inter, size: 7 pt}}\nfront:\n  column:\n    holds:\n" + extra +
           "      - {caution: not-food}\n      - {caution: dust}\n      - {caution: airtight}\n      - {caution: "
           "hazards}\n";
}

} // namespace

TEST_CASE("cautions never shrink and never lie on something", "[layout]") {
    SECTION("room enough") {
        CHECK(complaints(jar_layout("width: 80 mm, height: 60 mm", "")).empty());
    }
    SECTION("too little room is one error, about the record") {
        const auto found = complaints(jar_layout("width: 80 mm, height: 12 mm", ""));
        REQUIRE(found.size() == 1);
        CHECK(found[0].severity == Severity::error);
        CHECK(found[0].message.starts_with(
            "“sloe-shaker”: the label “t” of 80 mm × 12 mm is too small for its cautions by "));
    }
    SECTION("under a background") {
        const auto found = complaints(
            "layout: t\nfor: jars\nshape: {width: 80 mm, height: 60 mm}\n"
            "styles: {body: {font: Inter, size: 7 pt}}\nfront:\n  layers:\n    holds:\n"
            "      - column: [{caution: not-food}, {caution: dust}, {caution: airtight}, {caution: hazards}]\n"
            "      - column: {height: fill, width: fill, background: \"#000000\", holds: [{blank: 2 mm}]}\n");
        REQUIRE(found.size() == 4);
        CHECK(found[0].severity == Severity::error);
        CHECK(found[0].message == "“sloe-shaker”: the caution “NOT FOOD” is covered by a background");
    }
    SECTION("on one another") {
        const auto found = complaints("layout: t\nfor: jars\nshape: {width: 80 mm, height: 60 mm}\n"
                                      "styles: {body: {font: Inter, size: 7 pt}}\nfront:\n  layers:\n    holds:\n"
                                      "      - {caution: not-food}\n      - {caution: dust}\n"
                                      "      - column: [{blank: 20 mm}, {caution: airtight}, {caution: hazards}]\n");
        REQUIRE(found.size() == 1);
        CHECK(found[0].severity == Severity::error);
        CHECK(found[0].message.find("“NOT FOOD” is covered by the caution “Dye powder") != std::string::npos);
    }
    SECTION("on a background of its own") {
        CHECK(complaints("layout: t\nfor: jars\nshape: {width: 80 mm, height: 60 mm}\n"
                         "styles: {body: {font: Inter, size: 7 pt}}\nfront:\n  column:\n    holds:\n"
                         "      - column: {background: \"#000000\", holds: [{caution: not-food}]}\n"
                         "      - {caution: dust}\n      - {caution: airtight}\n      - {caution: hazards}\n")
                  .empty());
    }
    SECTION("on a hole") {
        const auto found = complaints(jar_layout("width: 80 mm, height: 60 mm", "") +
                                      "holes:\n  - {x: 6 mm, y: 6 mm, diameter: 5 mm}\n");
        REQUIRE_FALSE(found.empty());
        CHECK(found[0].severity == Severity::error);
        CHECK(found[0].message.find("lies on a hole") != std::string::npos);
    }
    SECTION("on a colour") {
        const auto found =
            complaints("layout: t\nfor: jars\nshape: {width: 80 mm, height: 60 mm}\n"
                       "styles: {body: {font: Inter, size: 7 pt}}\nfront:\n  column:\n    holds:\n"
                       "      - layers: [{swatch: jar.patch}, {caution: not-food}]\n"
                       "      - {caution: dust}\n      - {caution: airtight}\n      - {caution: hazards}\n");
        REQUIRE(found.size() == 1);
        CHECK(found[0].severity == Severity::error);
        CHECK(found[0].message == "“sloe-shaker”: the caution “NOT FOOD” lies on a colour");
    }
    SECTION("on the strip that is stuck over") {
        const auto found =
            complaints(jar_layout("width: 80 mm, height: 60 mm", "") + "overlap: {edge: left, depth: 5 mm}\n");
        REQUIRE_FALSE(found.empty());
        CHECK(found[0].message.find("lies on the strip that is stuck over") != std::string::npos);
    }
}

TEST_CASE("text too close to the edge is a warning", "[layout]") {
    const auto found = complaints("layout: t\nfor: dyes\nshape: {width: 40 mm, height: 20 mm, safe: 3 mm}\n"
                                  "front: {text: \"{dye.name}\", style: {font: Inter}}\n");
    REQUIRE(found.size() == 1);
    CHECK(found[0].message == "“sloe”: the text “Sloe” comes closer than 3 mm to the edge");
}

TEST_CASE("text on a swatch is black or white by contrast", "[layout]") {
    Diagnostics diagnostics;
    const auto design =
        design_of("layout: t\nfor: dyes\nshape: {width: 40 mm, height: 20 mm}\n"
                  "front: {swatch: dye.swatch.deepest, holds: [{text: \"{dye.code}\", style: {font: Inter}}]}\n",
                  diagnostics);
    REQUIRE(design);
    Records records = sample_records();
    const auto ink_on = [&](Rgb colour) {
        records.dyes[0].swatches[2].colour->value = colour;
        const auto items = make_items(records, ItemKind::dyes, {}, {}, printing, diagnostics);
        const auto label = place_label(*design, items.front(), {mm(40), mm(20)}, typesetter(), diagnostics);
        for (const DisplayItem& item : label.front->items) {
            if (const auto* run = std::get_if<DrawRun>(&item)) return run->colour;
        }
        return Rgb{0.5, 0.5, 0.5};
    };
    CHECK(ink_on({0.1, 0.1, 0.3}) == Rgb{1, 1, 1});
    CHECK(ink_on({0.9, 0.9, 0.6}) == Rgb{0, 0, 0});
}

namespace {

// The rectangle around a filled path's corners.
Rect around(const FillPath& fill) {
    Rect rect{{metres(1), metres(1)}, {}};
    Point most;
    for (const auto& piece : fill.path) {
        const Point* point = nullptr;
        if (const auto* move = std::get_if<MoveTo>(&piece)) point = &move->to;
        if (const auto* line = std::get_if<LineTo>(&piece)) point = &line->to;
        if (point == nullptr) continue;
        rect.origin = {smaller(rect.origin.x, point->x), smaller(rect.origin.y, point->y)};
        most = {larger(most.x, point->x), larger(most.y, point->y)};
    }
    rect.size = {most.x - rect.origin.x, most.y - rect.origin.y};
    return rect;
}

} // namespace

TEST_CASE("a colour that reaches the edge runs on into the bleed, and nothing else does", "[layout]") {
    Diagnostics diagnostics;
    const auto design =
        design_of("layout: t\nfor: dyes\nshape: {width: 40 mm, height: 20 mm, bleed: 3 mm}\n"
                  "front: {column: [{blank: fill}, {swatch: dye.swatch.deepest, height: 5 mm},"
                  " {blank: 2 mm}, {swatch: dye.swatch.deepest, height: 5 mm, margin: [0 mm, 4 mm, 0 mm, 4 mm]}]}\n",
                  diagnostics);
    REQUIRE(design);
    const Records records = sample_records();
    const auto items = make_items(records, ItemKind::dyes, {}, {}, printing, diagnostics);
    const auto label = place_label(*design, items.front(), {mm(40), mm(20)}, typesetter(), diagnostics);
    std::vector<std::string> rects;
    for (const DisplayItem& item : label.front->items) {
        if (const auto* fill = std::get_if<FillPath>(&item)) rects.push_back(to_string(around(*fill)));
    }
    CHECK(rects == std::vector<std::string>{"-3,8 46x5", "4,15 32x8"});
}

namespace {

// One base whose tag shows care in symbols, in a box of this height.
std::string care_layout(const std::string& height) {
    return "layout: care\nfor: bases\nshape: {width: 60 mm, height: 40 mm}\nfront:\n  row:\n    gap: 2 mm\n    holds:\n"
           "      - repeat: base.care_symbols\n        holds:\n          - {symbol: care.symbol, height: " +
           height + "}\n";
}

Records symbol_records() {
    Records records = sample_records();
    records.studio.care_style = CareStyle::symbols;
    records.bases.front().care = {*find_care("wash 30 gentle"), *find_care("no bleach")};
    return records;
}

} // namespace

TEST_CASE("a symbol is scaled to its box and keeps its shape", "[layout]") {
    const Records records = symbol_records();
    Diagnostics diagnostics;
    const auto design = design_of(care_layout("6 mm"), diagnostics);
    REQUIRE(design);
    const auto items = make_items(records, ItemKind::bases, {}, {}, printing, diagnostics);
    const auto label = place_label(*design, items.front(), {mm(60), mm(40)}, typesetter(), diagnostics);
    REQUIRE(diagnostics.errors() == 0);
    // Each stands between the begin and the end of a figure.
    CHECK(std::get<BeginTag>(label.front->items.at(0)).tag.words == "Wash 30 °C, gentle");
    const auto& first = std::get<Group>(label.front->items.at(1));
    CHECK(first.list == symbol_drawing("care/wash 30 gentle", false));
    CHECK(first.transform.a == Approx(0.6)); // drawn 10 mm high
    CHECK(first.transform.d == Approx(0.6));
    const auto& second = std::get<Group>(label.front->items.at(4));
    CHECK(second.transform.dx.in_mm() == Approx(first.list->size.width.in_mm() * 0.6 + 2));
}

TEST_CASE("a symbol too small to be told is warned of", "[layout]") {
    const auto too_low = [](const std::string& height) {
        std::vector<Diagnostic> found = complaints(care_layout(height), symbol_records());
        std::erase_if(found, [](const Diagnostic& one) { return !one.message.ends_with("too low to be told"); });
        return found;
    };
    CHECK(too_low("5 mm").empty());
    const auto found = too_low("4 mm");
    REQUIRE(found.size() == 2);
    CHECK(found.front().severity == Severity::warning);
    CHECK(found.front().message == "“sock”: the symbol “Wash 30 °C, gentle” is 1 mm too low to be told");
}

TEST_CASE("words keep 3 mm from the cut of a label that bleeds, unless it says otherwise", "[layout]") {
    const auto warnings = [](const std::string& shape) {
        return complaints("layout: tag\nfor: dyes\nshape: {width: 60 mm, height: 40 mm" + shape +
                          "}\nfront: {column: {padding: 1 mm, holds: [{text: \"{dye.name}\"}]}}\n")
            .size();
    };
    CHECK(warnings("") == 0);
    CHECK(warnings(", bleed: 3 mm") == 1);
    CHECK(warnings(", bleed: 3 mm, safe: 1 mm") == 0);
}

TEST_CASE("a label below what its layout is made for is warned of", "[layout]") {
    const auto found = complaints("layout: small\nfor: dyes\n"
                                  "shape: {width: 60 mm, height: 40 mm, least width: 60 mm, least height: 52 mm}\n"
                                  "front: {column: [{text: \"{dye.name}\"}]}\n");
    REQUIRE(found.size() == 1);
    CHECK(found.front().severity == Severity::warning);
    CHECK(found.front().message ==
          "“sloe”: the label is 40 mm high, and the layout “small” is made for at least 52 mm");
}

TEST_CASE("a hole on the left of the front is on the right of the back, and marked on the front alone", "[layout]") {
    const auto layout = [](const std::string& align) {
        return "layout: t\nfor: dyes\nshape: {width: 40 mm, height: 30 mm}\n"
               "holes:\n  - {x: 6 mm, y: 6 mm, diameter: 4 mm}\n"
               "front: {blank: 1 mm}\n"
               "back:\n  column:\n    padding: 3 mm\n    holds:\n"
               "      - {text: \"{dye.name}\", style: {font: Inter, size: 8 pt}, align: " +
               align + "}\n";
    };
    CHECK(complaints(layout("start")).empty());
    const auto found = complaints(layout("end"));
    REQUIRE(found.size() == 1);
    CHECK(found[0].message == "“sloe”: the text “Sloe” lies on a hole or too close to it");

    Diagnostics diagnostics;
    const auto design = design_of(layout("start"), diagnostics);
    const Records records = sample_records();
    const auto items = make_items(records, ItemKind::dyes, {}, {}, printing, diagnostics);
    const PlacedLabel label = place_label(*design, items.front(), {mm(40), mm(30)}, typesetter(), diagnostics);
    const auto is_line = [](const DisplayItem& drawn) { return std::holds_alternative<StrokePath>(drawn); };
    CHECK(std::ranges::count_if(label.front->items, is_line) == 3); // the circle and its cross
    CHECK(std::ranges::count_if(label.back->items, is_line) == 0);
}
