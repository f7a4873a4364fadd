#include "english.h"
#include "facts/items.h"

#include "studio_records.h"

#include <catch2/catch.hpp>
#include <string>
#include <vector>

using namespace dyeleaf;

namespace {

const Printing printing{{english()}, nullptr, {2027, 1, 30}};

using Names = std::vector<std::string>;

Names ids(const Records& records, ItemKind kind, const Selection& selection, Diagnostics& diagnostics,
          std::optional<Grouping> grouping = std::nullopt) {
    Names result;
    for (const Item& item : make_items(records, kind, grouping, selection, printing, diagnostics))
        result.push_back(item.id);
    return result;
}

Names ids(const Records& records, ItemKind kind, const Selection& selection = {},
          std::optional<Grouping> grouping = std::nullopt) {
    Diagnostics diagnostics;
    Names result = ids(records, kind, selection, diagnostics, grouping);
    CHECK(diagnostics.errors() == 0);
    return result;
}

std::vector<Diagnostic> complaints(const Records& records, ItemKind kind, const Selection& selection = {}) {
    Diagnostics diagnostics;
    ids(records, kind, selection, diagnostics);
    return diagnostics.sorted();
}

std::string text(const Facts& facts, const std::string& name) {
    const auto value = facts.find(name);
    return value ? std::get<std::string>(*value) : "(none)";
}

// Names of the dyes on each card.
std::vector<Names> cards(const Records& records, const Grouping& grouping, const Selection& selection = {}) {
    Diagnostics diagnostics;
    std::vector<Names> result;
    for (const Item& card : make_items(records, ItemKind::dyes, grouping, selection, printing, diagnostics)) {
        result.emplace_back();
        const auto dyes = std::get<std::vector<Facts>>(card.facts.find("card.dyes").value());
        CHECK(text(card.facts, "card.dye_count") == std::to_string(dyes.size()));
        for (const Facts& dye : dyes)
            result.back().push_back(text(dye, "dye.id"));
    }
    return result;
}

Dye coloured(const std::string& id, const std::string& line, const std::string& colour) {
    Dye dye = plain_dye(id, id, line, id);
    dye.swatches = {swatch(1, "plain-sock", hex(colour))};
    return dye;
}

Records shelf() {
    Records records = studio_records();
    records.dyes = {coloured("blue", "Second", "#3060a0"), coloured("grey", "First", "#808080"),
                    coloured("red", "Second", "#c83020"),  plain_dye("bare", "bare", "First", "bare"),
                    coloured("green", "First", "#40a040"), coloured("pink", "First", "#ff69b4")};
    return records;
}

} // namespace

TEST_CASE("dyes come by line as first recorded, by hue within it", "[facts]") {
    CHECK(ids(shelf(), ItemKind::dyes) == Names{"red", "blue", "pink", "green", "grey", "bare"});
}

TEST_CASE("dyes of one hue keep their recorded order", "[facts]") {
    Records records = shelf();
    records.dyes = {coloured("b", "L", "#c83020"), coloured("a", "L", "#c83020"), coloured("c", "L", "#c83020")};
    CHECK(ids(records, ItemKind::dyes) == Names{"b", "a", "c"});
}

TEST_CASE("a new line starts a new card", "[facts]") {
    CHECK(cards(shelf(), {3, Together::by_line}) ==
          std::vector<Names>{{"red", "blue"}, {"pink", "green", "grey"}, {"bare"}});
    CHECK(ids(shelf(), ItemKind::dyes, {}, Grouping{3, Together::by_line}) ==
          Names{"card 1, Second", "card 2, First", "card 3, First"});
}

TEST_CASE("cards by hue run across lines", "[facts]") {
    CHECK(cards(shelf(), {4, Together::by_hue}) ==
          std::vector<Names>{{"pink", "red", "green", "blue"}, {"grey", "bare"}});
    CHECK(ids(shelf(), ItemKind::dyes, {}, Grouping{4, Together::by_hue}) == Names{"card 1", "card 2"});
}

TEST_CASE("a selection names dyes or lines, in any order", "[facts]") {
    CHECK(ids(shelf(), ItemKind::dyes, {{"green", "red", "green"}}) == Names{"red", "green"});
    CHECK(ids(shelf(), ItemKind::dyes, {{"second"}}) == Names{"red", "blue"});
    CHECK(cards(shelf(), {9, Together::by_line}, {{"First"}}) == std::vector<Names>{{"pink", "green", "grey", "bare"}});
}

TEST_CASE("a card printed again keeps its number", "[facts]") {
    const Records records = shelf();
    Diagnostics diagnostics;
    const auto again = make_items(records, ItemKind::dyes, std::nullopt, {{"green"}}, printing, diagnostics);
    REQUIRE(again.size() == 1);
    CHECK(text(again[0].facts, "card.of") == "4 of 6");
    CHECK(text(again[0].facts, "card.group") == "First");
}

TEST_CASE("a selector that names nothing is an error with the nearest name", "[facts]") {
    const Records records = studio_records();
    const auto dye = complaints(records, ItemKind::dyes, {{"slo", "ember"}});
    REQUIRE(dye.size() == 1);
    CHECK(dye[0].severity == Severity::error);
    CHECK(dye[0].message == "there is no dye or line “slo”");
    CHECK(dye[0].help == "did you mean “sloe”?");
    CHECK(complaints(records, ItemKind::jars, {{"two-spoon"}})[0].help == "did you mean “two-spoons”?");
    CHECK(complaints(records, ItemKind::lots, {{"26-118"}})[0].message == "there is no lot “26-118”");
    CHECK(complaints(records, ItemKind::bases, {{"plain-sox"}})[0].help == "did you mean “plain-sock”?");
    CHECK(complaints(records, ItemKind::skeins, {{"26-118:2"}})[0].help == "did you mean “26-117”?");
    // Near to any name that would have been taken.
    CHECK(complaints(records, ItemKind::dyes, {{"F-413"}})[0].help == "did you mean “F-412”?");
    CHECK(complaints(records, ItemKind::jars, {{"fenlight acids"}})[0].help == "did you mean “Fenlight acid”?");
    CHECK(complaints(records, ItemKind::lots, {{"Hedge in Octobr"}})[0].help == "did you mean “Hedge in October”?");
    CHECK(complaints(records, ItemKind::skeins, {{"plain-sox"}})[0].help == "did you mean “plain-sock”?");
    // A range takes a lot alone.
    CHECK(complaints(records, ItemKind::skeins, {{"Fog:2"}})[0].help == "known here: 26-117, 0077");
}

TEST_CASE("a dye is meant by its code", "[facts]") {
    CHECK(ids(studio_records(), ItemKind::dyes, {{"F-412"}}) == Names{"sloe"});
    CHECK(ids(studio_records(), ItemKind::dyes, {{"f-412", "t24"}}) == Names{"sloe", "ember"});
}

TEST_CASE("a jar is meant by its code, and by a dye in it", "[facts]") {
    const Records records = studio_records();
    const Names both{"sloe-shaker", "two-spoons"};
    CHECK(ids(records, ItemKind::jars, {{"ts"}}) == Names{"two-spoons"});
    CHECK(ids(records, ItemKind::jars, {{"sloe"}}) == both);
    CHECK(ids(records, ItemKind::jars, {{"ember"}}) == Names{"two-spoons"});
    CHECK(ids(records, ItemKind::jars, {{"F-412"}}) == both);
    CHECK(ids(records, ItemKind::jars, {{"fenlight ACID"}}) == both);
    CHECK(ids(records, ItemKind::jars, {{"Tarnbeck milling"}}) == Names{"two-spoons"});
}

TEST_CASE("a lot is meant by its base and its colourway", "[facts]") {
    Records records = studio_records();
    CHECK(ids(records, ItemKind::lots, {{"plain-sock"}}) == Names{"26-117"});
    CHECK(ids(records, ItemKind::lots, {{"hedge in october"}}) == Names{"26-117"});
    CHECK(ids(records, ItemKind::skeins, {{"FOG"}}) == Names{"0077:1", "0077:2", "0077:3"});
    CHECK(ids(records, ItemKind::skeins, {{"fell-dk"}}) == Names{"0077:1", "0077:2", "0077:3"});
    records.lots[1].colourway = "Fog: thick";
    CHECK(ids(records, ItemKind::skeins, {{"fog: thick"}}) == Names{"0077:1", "0077:2", "0077:3"});
}

TEST_CASE("an id is not taken for a name that many share", "[facts]") {
    Records records = studio_records();
    records.lots[0].recipe.lines.clear();
    records.jars[0].id.value = "sloe";
    CHECK(ids(records, ItemKind::jars, {{"sloe"}}) == Names{"sloe"});
    records.lots[1].colourway = "26-117";
    CHECK(ids(records, ItemKind::lots, {{"26-117"}}) == Names{"26-117"});
}

TEST_CASE("what has no name is not meant by an empty selector", "[facts]") {
    Records records = studio_records();
    records.dyes[0].line.clear();
    records.lots[0].colourway.clear();
    for (const ItemKind kind : {ItemKind::dyes, ItemKind::jars, ItemKind::lots, ItemKind::skeins})
        CHECK(complaints(records, kind, {{""}}).size() == 1);
}

TEST_CASE("skeins are numbered, spoilt ones leave a hole", "[facts]") {
    const Records records = studio_records();
    CHECK(ids(records, ItemKind::skeins) == Names{"26-117:1", "26-117:2", "26-117:3", "26-117:4", "26-117:5",
                                                  "26-117:6", "26-117:8", "26-117:9", "26-117:10", "26-117:11",
                                                  "26-117:12", "0077:1", "0077:2", "0077:3"});
    CHECK(ids(records, ItemKind::skeins, {{"0077"}}) == Names{"0077:1", "0077:2", "0077:3"});
    CHECK(ids(records, ItemKind::skeins, {{"26-117:6-8", "0077:2", "26-117:1"}}) ==
          Names{"26-117:1", "26-117:6", "26-117:8", "0077:2"});
    CHECK(ids(records, ItemKind::skeins, {{"hedge in october"}}).size() == 11);
    CHECK(ids(records, ItemKind::lots) == Names{"26-117", "0077"});
    CHECK(ids(records, ItemKind::bases) == Names{"plain-sock", "fell-dk"});
}

TEST_CASE("a lot's name may hold a colon", "[facts]") {
    Records records = studio_records();
    records.lots[1].id.value = "a:2";
    CHECK(ids(records, ItemKind::skeins, {{"a:2"}}) == Names{"a:2:1", "a:2:2", "a:2:3"});
    CHECK(ids(records, ItemKind::skeins, {{"a:2:3"}}) == Names{"a:2:3"});
}

TEST_CASE("a range of skeins must make sense", "[facts]") {
    const auto [selector, message] = GENERATE(table<const char*, const char*>({
        {"0077:x", "“0077:x” does not say which skeins"},
        {"0077:", "“0077:” does not say which skeins"},
        {"0077:1-", "“0077:1-” does not say which skeins"},
        {"0077:3-1", "“0077:3-1” counts backwards"},
        {"0077:0", "“0077:0” asks for skeins that there are not"},
        {"0077:2-4", "“0077:2-4” asks for skeins that there are not"},
        {"26-117:7", "skein 7 of lot 26-117 is recorded as spoilt"},
    }));
    const auto found = complaints(studio_records(), ItemKind::skeins, {{selector}});
    REQUIRE(found.size() == 1);
    CHECK(found[0].message == message);
    CHECK_FALSE(found[0].help.empty());
}

TEST_CASE("rounding to the scale's step is a warning once it shows", "[facts]") {
    Records records = studio_records();
    records.jars = {full_jar()};
    CHECK(complaints(records, ItemKind::jars).empty());
    records.jars[0].parts[1].parts = 34.7;
    records.jars[0].batch = grams(10);
    const auto found = complaints(records, ItemKind::jars);
    REQUIRE(found.size() == 1);
    CHECK(found[0].severity == Severity::warning);
    CHECK(found[0].message == "weighed in steps of 0.1 g, jar “sloe-shaker” holds 3 % dye instead of 2.8 %");
}

TEST_CASE("a colour that is nothing like what can be shown is a warning that names its swatch", "[facts]") {
    Records records = studio_records();
    records.dyes[0].swatches[0].colour = Sourced<RecordedColour>{Lab{50, -100, 0}, {}};
    const auto found = complaints(records, ItemKind::dyes);
    REQUIRE(found.size() == 1);
    CHECK(found[0].severity == Severity::warning);
    CHECK(found[0].message.starts_with(
        "the colour of Sloe at 2 % on Plain Sock is far stronger than a screen or printer can show (ΔE00 "));
    // A strong turquoise of acid dyes; its patch is marked, and that is enough.
    records.dyes[0].swatches[0].colour = Sourced<RecordedColour>{Lab{44, -26, -40}, {}};
    CHECK(complaints(records, ItemKind::dyes).empty());
}

TEST_CASE("a curve that goes over all light is a warning where nothing is said to glow", "[facts]") {
    Records records = studio_records();
    std::vector<double> glowing(31, 0.05);
    glowing[30] = 1.343;
    records.dyes[0].swatches[0].colour = Sourced<RecordedColour>{Spectrum{400, 10, glowing}, {}};
    const auto found = complaints(records, ItemKind::dyes);
    REQUIRE(found.size() == 1);
    CHECK(found[0].message == "the curve of Sloe at 2 % on Plain Sock goes up to 134.3 % at 700 nm: more light than "
                              "falls on it there");
    records.dyes[0].fluorescent = true;
    CHECK(complaints(records, ItemKind::dyes).empty());
}
