// Single values out of nodes.
#include "source/values.h"

#include <catch2/catch.hpp>

using namespace dyeleaf;

namespace {

Node scalar(const std::string& text, bool quoted = false) {
    Node node;
    node.kind = Node::Kind::scalar;
    node.text = text;
    node.quoted = quoted;
    return node;
}

} // namespace

TEST_CASE("units are exact", "[source]") {
    Diagnostics diagnostics;
    const LengthRange paper{mm(0), metres(10)};
    CHECK(read_length(scalar("2 in"), "width", paper, diagnostics)->in_mm() == 50.8);
    CHECK(read_length(scalar("2in"), "width", paper, diagnostics)->in_mm() == 50.8);
    CHECK(read_length(scalar("4.2 cm"), "width", paper, diagnostics)->in_mm() == 42.0);
    CHECK(read_length(scalar("72 pt"), "width", paper, diagnostics)->in_mm() == Approx(25.4).epsilon(1e-15));
    // International yard and pound agreement, 1959.
    const LengthRange yarn{mm(0), metres(1e6)};
    CHECK(read_yarn_length(scalar("437 yd"), "length", yarn, diagnostics)->in_m() == Approx(399.5928).epsilon(1e-12));
    CHECK(read_yarn_length(scalar("0.42 km"), "length", yarn, diagnostics)->in_m() == Approx(420));
    const Range<Mass> any{grams(0), grams(1e9)};
    CHECK(read_mass(scalar("12 oz"), "weight", any, diagnostics)->number() == Approx(340.194277500).epsilon(1e-12));
    CHECK(read_mass(scalar("1 lb"), "weight", any, diagnostics)->number() == 453.59237);
    CHECK(read_mass(scalar("250 mg"), "weight", any, diagnostics)->number() == 0.25);
    CHECK(read_volume(scalar("60 ml"), "holds", {millilitres(0), millilitres(100)}, diagnostics)->number() == 60);
    CHECK(read_volume(scalar("0.06 L"), "holds", {millilitres(0), millilitres(100)}, diagnostics)->number() == 60);
    CHECK(read_percent(scalar("0.5%"), "depth", {percent(0), percent(100)}, diagnostics)->number() == 0.5);
    CHECK(diagnostics.sorted().empty());
}

TEST_CASE("a type size without a unit is shown in points", "[source]") {
    Diagnostics diagnostics;
    CHECK(read_type_size(scalar("9 pt"), "size", {mm(0), mm(100)}, diagnostics)->in_pt() == Approx(9));
    CHECK(read_type_size(scalar("3 mm"), "size", {mm(0), mm(100)}, diagnostics)->in_mm() == 3);
    CHECK_FALSE(read_type_size(scalar("17"), "size", {mm(0), mm(100)}, diagnostics));
    REQUIRE(diagnostics.sorted().size() == 1);
    CHECK(diagnostics.sorted()[0].help == "write “17 pt”");
}

TEST_CASE("imperial amounts are known by their units", "[source]") {
    for (const char* text : {"3.5 oz", "437yd", "0.25 LB", "2 in"})
        CHECK(is_imperial(scalar(text)));
    for (const char* text : {"100 g", "420 m", "12 mm", "12", ""})
        CHECK_FALSE(is_imperial(scalar(text)));
}

TEST_CASE("both ends of a range are within it", "[source]") {
    Diagnostics diagnostics;
    const LengthRange range{mm(20), mm(120)};
    CHECK(read_length(scalar("20 mm"), "diameter", range, diagnostics));
    CHECK(read_length(scalar("120 mm"), "diameter", range, diagnostics));
    CHECK_FALSE(read_length(scalar("19.99 mm"), "diameter", range, diagnostics));
    CHECK_FALSE(read_length(scalar("121 mm"), "diameter", range, diagnostics));
    CHECK(read_whole(scalar("1"), "skeins", {1, 9}, diagnostics) == 1);
    CHECK_FALSE(read_whole(scalar("10"), "skeins", {1, 9}, diagnostics));
    CHECK(read_decimal(scalar("0.5"), "parts", {0.5, 2}, diagnostics) == 0.5);
}

TEST_CASE("a decimal comma in quotes is a point, with a warning", "[source]") {
    Diagnostics diagnostics;
    CHECK(read_mass(scalar("3,5 g", true), "batch", {grams(0), grams(10)}, diagnostics)->number() == 3.5);
    CHECK(diagnostics.warnings() == 1);
    CHECK(diagnostics.errors() == 0);
    CHECK_FALSE(read_mass(scalar("3,5 g"), "batch", {grams(0), grams(10)}, diagnostics));
    CHECK(diagnostics.errors() == 1);
}

TEST_CASE("a number that no computer holds is refused", "[source]") {
    Diagnostics diagnostics;
    CHECK_FALSE(read_mass(scalar(std::string(400, '9') + " g"), "batch", {grams(0), grams(10)}, diagnostics));
    CHECK_FALSE(read_whole(scalar("99999999999"), "skeins", {1, 9}, diagnostics));
    CHECK(diagnostics.errors() == 2);
}

TEST_CASE("words of a set are read whatever their case, and the nearest is named", "[source]") {
    Diagnostics diagnostics;
    const std::vector<std::pair<std::string, int>> choices = {{"start", 1}, {"centre", 2}, {"end", 3}};
    CHECK(read_choice<int>(scalar("Centre"), "align", choices, diagnostics) == 2);
    CHECK_FALSE(read_choice<int>(scalar("center"), "align", choices, diagnostics));
    REQUIRE(diagnostics.sorted().size() == 1);
    CHECK(diagnostics.sorted()[0].message == "“center” is not one of the words for “align”");
    CHECK(diagnostics.sorted()[0].help == "did you mean “centre”? the words are: start, centre, end");
}

TEST_CASE("texts are trimmed, on one line and not empty; prose may run on", "[source]") {
    Diagnostics diagnostics;
    CHECK(read_text(scalar("  Sloe \n"), "name", diagnostics) == "Sloe");
    CHECK(read_prose(scalar("one\ntwo\n"), "notes", diagnostics) == "one two");
    CHECK(read_text(scalar(std::string(300, 'x')), "name", diagnostics));
    CHECK(diagnostics.errors() == 0);
    CHECK_FALSE(read_text(scalar("one\ntwo"), "name", diagnostics));
    CHECK_FALSE(read_text(scalar("  ", true), "name", diagnostics));
    CHECK_FALSE(read_text(scalar(std::string(301, 'x')), "name", diagnostics));
    CHECK_FALSE(read_text(Node{}, "name", diagnostics));
}

TEST_CASE("yes and no have four words", "[source]") {
    Diagnostics diagnostics;
    CHECK(read_yes_no(scalar("yes"), "bleeds", diagnostics) == true);
    CHECK(read_yes_no(scalar("False"), "bleeds", diagnostics) == false);
    CHECK_FALSE(read_yes_no(scalar("on"), "bleeds", diagnostics).has_value());
    CHECK_FALSE(read_yes_no(scalar("1"), "bleeds", diagnostics).has_value());
}
