// Codes to scan on a label: their place, their ground, and what is refused.
#include "design/read_design.h"
#include "english.h"
#include "layout/layout.h"
#include "project_folder.h"
#include "sample_records.h"
#include "setting.h"

#include <algorithm>
#include <catch2/catch.hpp>

using namespace dyeleaf;

namespace {

Records records_with_link() {
    Records records = sample_records();
    records.studio.link = "https://quillmoor.example/lot/";
    records.bases[0].numbers.ean = Sourced<std::string>{"2000000100012", {}};
    return records;
}

// Some lines after those that every layout has.
struct Label {
    std::vector<Diagnostic> complaints;
    PlacedLabel placed;
};
Label label_of(const std::string& lines, const Records& records = records_with_link(),
               const std::string& safe = "0 mm") {
    const std::string text = "layout: t\nfor: lots\nshape: {width: 50 mm, height: 40 mm, safe: " + safe +
                             "}\n"
                             "styles: {body: {font: Inter, size: 7 pt}}\n" +
                             lines;
    Diagnostics diagnostics;
    const auto node = parse_document(std::make_shared<const SourceFile>(SourceFile{"test.yaml", text}), diagnostics);
    REQUIRE(node);
    const auto design = read_design(*node, {}, typesetter().families(), diagnostics);
    if (!design || diagnostics.errors() > 0) return {diagnostics.sorted(), {}};
    Diagnostics about_records;
    const auto items = make_items(records, design->items, {}, {}, printing, about_records);
    const auto size = label_size(*design, items.front(), diagnostics);
    REQUIRE(size);
    PlacedLabel placed = place_label(*design, items.front(), *size, typesetter(), diagnostics);
    return {diagnostics.sorted(), std::move(placed)};
}

std::string only_error(const std::string& lines, const Records& records = records_with_link()) {
    const auto found = label_of(lines, records).complaints;
    REQUIRE(found.size() == 1);
    CHECK(found[0].severity == Severity::error);
    return found[0].message + "; " + found[0].help;
}

std::vector<Tag> tags_of(const DisplayList& list) {
    std::vector<Tag> tags;
    for (const DisplayItem& item : list.items) {
        if (const auto* begin = std::get_if<BeginTag>(&item)) tags.push_back(begin->tag);
    }
    return tags;
}

} // namespace

TEST_CASE("a QR code leads to the lot's page and says so", "[layout]") {
    Records records = records_with_link();
    records.lots[0].id.value = "0077/b";
    const Label label = label_of("front: {column: [{code: \"{lot.link}\", as: qr, width: 20 mm}]}\n", records);
    CHECK(label.complaints.empty());
    const auto tags = tags_of(*label.placed.front);
    REQUIRE(tags.size() == 1);
    CHECK(tags[0].role == Tag::Role::figure);
    CHECK(tags[0].words == "QR code: https://quillmoor.example/lot/0077%2Fb");
    CHECK(tags[0].target == "https://quillmoor.example/lot/0077%2Fb");
    CHECK(near(tags[0].place.size.width, tags[0].place.size.height));
}

TEST_CASE("without a link the code is left out, or another text stands in for it", "[layout]") {
    Records records = records_with_link();
    records.studio.link.reset();
    CHECK(tags_of(*label_of("front: {column: [{code: \"{lot.link}\", as: qr}]}\n", records).placed.front).empty());
    const auto tags = tags_of(
        *label_of("front: {column: [{code: \"{lot.link}\", else: \"{lot.id}\", as: qr}]}\n", records).placed.front);
    REQUIRE(tags.size() == 1);
    CHECK(tags[0].words == "QR code: 0077");
    CHECK(tags[0].target.empty());
}

TEST_CASE("an EAN carries its digits below the bars", "[layout]") {
    const Label label = label_of("front: {column: [{code: \"{lot.ean}\", as: ean-13, height: 22 mm}]}\n");
    CHECK(label.complaints.empty());
    std::string digits;
    for (const DisplayItem& item : label.placed.front->items) {
        if (const auto* run = std::get_if<DrawRun>(&item)) digits += run->run->text;
    }
    CHECK(digits == "2000000100012");
    CHECK(tags_of(*label.placed.front)[0].words == "Barcode: 2000000100012");
}

TEST_CASE("what stands below the bars keeps clear of them", "[layout]") {
    for (const char* code :
         {"{code: \"{lot.ean}\", as: ean-13, height: 22 mm}", "{code: \"{lot.id}\", as: code-128}"}) {
        INFO(code);
        const Label label = label_of("front: {column: [" + std::string{code} + "]}\n");
        CHECK(label.complaints.empty());
        const auto& items = label.placed.front->items;
        Length bars_end; // of those that do not reach down
        Length ground_end;
        for (const DisplayItem& item : items) {
            const auto* fill = std::get_if<FillPath>(&item);
            if (fill == nullptr) continue;
            Length least = mm(1000);
            Length top = mm(1000);
            // Before the black bars stands the place they are counted from.
            for (std::size_t i = fill->colour == Rgb{} ? 1 : 0; i + 3 < fill->path.size(); i += 5) {
                const Point corner = std::get<LineTo>(fill->path[i + 2]).to;
                least = smaller(least, corner.y);
                top = smaller(top, std::get<MoveTo>(fill->path[i]).to.y);
            }
            (fill->colour == Rgb{} ? bars_end : ground_end) = least;
        }
        for (const DisplayItem& item : items) {
            const auto* run = std::get_if<DrawRun>(&item);
            if (run == nullptr) continue;
            const Length cap = run->size * typesetter().metrics({"Inter"}).cap_height;
            CHECK(run->baseline.y - cap > bars_end);
            CHECK(fits(run->baseline.y, ground_end));
        }
    }
}

TEST_CASE("a code that its place is too small for says what it needs", "[layout]") {
    CHECK(only_error("front: {column: [{code: \"{lot.link}\", as: qr, width: 12 mm}]}\n") ==
          "“0077”: the code “https://quillmoor.example/lot/0077” needs 15.8 × 15.8 mm to be scanned, and its place is "
          "3.8 mm too narrow; give the box more room in the layout, or the code a shorter text");
    CHECK(only_error("front: {column: [{code: \"{lot.ean}\", as: ean-13, width: 30 mm}]}\n")
              .starts_with("“0077”: the code “2000000100012” needs 38.4 × "));
}

TEST_CASE("what cannot be a code is an error about the record and the box", "[layout]") {
    Records records = records_with_link();
    records.lots[0].colourway = "Violette d’été";
    CHECK(only_error("front: {column: [{code: \"{lot.colourway}\", as: code-128}]}\n", records) ==
          "“0077”: “Violette d’été” cannot be a Code 128: that has letters without accents, digits and plain signs; "
          "write it otherwise, or place it with as: qr");
    CHECK(only_error("front: {column: [{code: \"200000010001{lot.skeins}\", as: ean-13}]}\n", records) ==
          "“0077”: the last digit of “2000000100016” checks the others, and does not fit them; it would be 2, as in "
          "\"2000000100012\"; compare every digit first, for the slip may be in any of them");
}

TEST_CASE("a layout says which kind of code, and no finer than can be scanned", "[layout]") {
    CHECK(only_error("front: {column: [{code: \"{lot.link}\"}]}\n").starts_with("this code has no “as”"));
    CHECK(only_error("front: {column: [{code: \"{lot.link}\", as: ean}]}\n").find("ean-13") != std::string::npos);
    CHECK(only_error("front: {column: [{code: \"{lot.link}\", as: qr, module: 0.2 mm}]}\n")
              .starts_with("module of 0.2 mm is too small; the least is 0.396 mm"));
}

TEST_CASE("nothing may lie on a code or be hidden by it", "[layout]") {
    const std::string code = "{code: \"{lot.link}\", as: qr, width: 18 mm}";
    SECTION("a text on top") {
        CHECK(only_error("front: {layers: {align: start, holds: [" + code + ", {text: \"{lot.colourway}\"}]}}\n") ==
              "“0077”: the code “https://quillmoor.example/lot/0077” is covered by the text “Hedge”; codes stand in a "
              "place of their own, white all round");
    }
    SECTION("a text below") {
        CHECK(
            only_error("front: {layers: {align: start, holds: [{text: \"{lot.colourway}\"}, " + code + "]}}\n") ==
            "“0077”: the code “https://quillmoor.example/lot/0077” lies on the text “Hedge”; codes stand in a place of "
            "their own, white all round");
    }
    SECTION("a text in the quiet zone") {
        // The code is 15.8 mm wide and its outer 1.7 mm are white.
        CHECK_FALSE(label_of("front: {layers: {align: start, holds: [" + code +
                             ", {row: [{blank: 14.6 mm}, {text: \"{lot.colourway}\"}]}]}}\n")
                        .complaints.empty());
        CHECK(label_of("front: {layers: {align: start, holds: [" + code +
                       ", {row: [{blank: 16 mm}, {text: \"{lot.colourway}\"}]}]}}\n")
                  .complaints.empty());
    }
    SECTION("a colour on top") {
        CHECK(only_error("front: {layers: {align: start, holds: [" + code +
                         ", {column: {background: \"#ffdd00\", height: 9 mm, holds: [{blank: 2 mm}]}}]}}\n")
                  .find("is covered by a background") != std::string::npos);
    }
    SECTION("a hole, a fold, a strip that is stuck over") {
        CHECK(only_error("holes: [{x: 9 mm, y: 9 mm, diameter: 4 mm}]\nfront: {column: [" + code + "]}\n")
                  .find("lies on a hole or too close to it") != std::string::npos);
        CHECK(only_error("folds: [{from: top, at: 9 mm}]\nfront: {column: [" + code + "]}\n").find("lies on a fold") !=
              std::string::npos);
        CHECK(only_error("overlap: {edge: left, depth: 9 mm}\nfront: {column: [" + code + "]}\n")
                  .find("lies on the strip that is stuck over") != std::string::npos);
    }
    SECTION("the edge") {
        const std::string padded = "front: {column: {padding: 2 mm, holds: [" + code + "]}}\n";
        CHECK(label_of(padded, records_with_link(), "2 mm").complaints.empty());
        const auto found = label_of(padded, records_with_link(), "3 mm").complaints;
        REQUIRE(found.size() == 1);
        CHECK(found[0].severity == Severity::error);
        CHECK(found[0].message ==
              "“0077”: the code “https://quillmoor.example/lot/0077” comes closer than 3 mm to the edge");
    }
}

TEST_CASE("a code on a colour stands on white of its own", "[layout]") {
    const Label label = label_of("front: {column: {background: \"#8d7fa8\", padding: 4 mm, holds: [{code: "
                                 "\"{lot.link}\", as: qr, width: 18 mm}]}}\n");
    CHECK(label.complaints.empty());
    std::vector<Rgb> fills;
    for (const DisplayItem& item : label.placed.front->items) {
        if (const auto* fill = std::get_if<FillPath>(&item)) fills.push_back(fill->colour);
    }
    REQUIRE(fills.size() == 3);
    CHECK(fills[1] == Rgb{1, 1, 1});
    CHECK(fills[2] == Rgb{0, 0, 0});
}

TEST_CASE("texts shrink to make room for a code that shares their column", "[layout]") {
    const Label label = label_of("front:\n  column:\n    holds:\n"
                                 "      - {text: \"{lot.colourway} and other words that take a few lines\", "
                                 "style: {like: body, size: 14 pt, smallest: 8 pt}}\n"
                                 "      - {text: \"{lot.colourway} and other words that take a few lines\", "
                                 "style: {like: body, size: 14 pt, smallest: 8 pt}}\n"
                                 "      - {code: \"{lot.link}\", as: qr, height: fill}\n");
    CHECK(label.complaints.empty());
}
