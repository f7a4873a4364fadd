// Boxes of symbols, placed without a record: their shape, and what is said of those that are too small.
#include "layout/check_label.h"
#include "layout/measure.h"
#include "project_folder.h"
#include "setting.h"
#include "symbols/symbols.h"

#include <catch2/catch.hpp>

using namespace dyeleaf;

namespace {

FilledBox symbol_in(const Box& box, const std::string& key) {
    return {SymbolMark{{key, "described", false}, symbol_drawing(key, false)}, &box};
}

Size wanted(const Box& box, const std::string& key) {
    return wanted_size(symbol_in(box, key), mm(80), Trial{&typesetter(), 0});
}

Box box_of(std::optional<Extent> width, std::optional<Extent> height) {
    Box box;
    box.width = width;
    box.height = height;
    return box;
}

std::vector<Diagnostic> complaints(const Box& box, const std::string& key) {
    const Size label{mm(60), mm(40)};
    Box row;
    Flow flow{Direction::across, {symbol_in(box, key)}};
    Design design;
    Item item;
    item.id = "sloe-shaker";
    Diagnostics diagnostics;
    const Placement placement = place({std::move(flow), &row}, label, {}, Trial{&typesetter(), 0});
    check_label(design, item, label, placement, {}, diagnostics);
    return diagnostics.sorted();
}

} // namespace

TEST_CASE("a symbol is as wide as its height asks for, or as high as its width does", "[layout]") {
    // The tub is 10.4 mm wide where it is 10 mm high, a pictogram as wide as high.
    CHECK(near(wanted(box_of({}, Extent::fixed(mm(5))), "care/wash 30").width, mm(5.2)));
    CHECK(near(wanted(box_of(Extent::fixed(mm(20.8)), {}), "care/wash 30").height, mm(20)));
    CHECK(near(wanted(box_of({}, Extent::fixed(mm(16))), "ghs/GHS07").width, mm(16)));
    // As small as it may be, where nothing is said.
    CHECK(near(wanted({}, "care/wash 30").height, mm(5)));
    CHECK(near(wanted({}, "ghs/GHS07").height, mm(14.142)));
}

TEST_CASE("padding is not counted as part of a symbol, and a turned one is measured on its side", "[layout]") {
    Box box = box_of({}, Extent::fixed(mm(12)));
    box.padding = Insets::all(mm(1));
    CHECK(near(wanted(box, "care/wash 30").width, mm(12.4)));
    CHECK(near(wanted(box, "care/wash 30").height, mm(12)));

    Box turned = box_of(Extent::fixed(mm(10)), {});
    turned.turn = Turn::left;
    CHECK(near(wanted(turned, "care/wash 30").width, mm(10)));
    CHECK(near(wanted(turned, "care/wash 30").height, mm(10.4)));
}

// CLP, annex I, table 1.3: a side of 10 mm, which stands on its point and is then 14.14 mm high.
TEST_CASE("a pictogram below its least size is an error that names record and box", "[layout]") {
    Box box = box_of({}, Extent::fixed(mm(12)));
    box.spot.line = 7;
    const auto found = complaints(box, "ghs/GHS07");
    REQUIRE(found.size() == 1);
    CHECK(found[0].severity == Severity::error);
    CHECK(found[0].spot.line == 7);
    CHECK(found[0].message == "“sloe-shaker”: the pictogram “described” is 2.2 mm too low to be told");
    CHECK(found[0].help == "give it 14.2 mm or more, so that each side of its frame is 10 mm long");
    CHECK(complaints(box_of({}, Extent::fixed(mm(14.2))), "ghs/GHS07").empty());
    CHECK(complaints({}, "ghs/GHS07").empty());
}

TEST_CASE("a care symbol below its least size is a warning", "[layout]") {
    const auto found = complaints(box_of({}, Extent::fixed(mm(4.5))), "care/no bleach");
    REQUIRE(found.size() == 1);
    CHECK(found[0].severity == Severity::warning);
    CHECK(found[0].message == "“sloe-shaker”: the symbol “described” is 0.5 mm too low to be told");
    CHECK(found[0].help == "give it 5 mm or more");
}

TEST_CASE("a pictogram that its box squeezes is too small as well", "[layout]") {
    const auto found = complaints(box_of(Extent::fixed(mm(10)), Extent::fixed(mm(20))), "ghs/GHS07");
    REQUIRE(found.size() == 1);
    CHECK(found[0].severity == Severity::error);
}
