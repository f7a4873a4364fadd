// What was read is what was written, and what was not written stays unknown.
#include "records/read_records.h"

#include <catch2/catch.hpp>

using namespace dyeleaf;

namespace {

Records read(const std::string& text) {
    Diagnostics diagnostics;
    std::vector files = {std::make_shared<const SourceFile>(SourceFile{"a.yaml", text})};
    if (text.find("studio:") == std::string::npos)
        files.push_back(std::make_shared<const SourceFile>(SourceFile{"studio.yaml", "studio: {name: Q}\n"}));
    auto records = read_records(files, diagnostics);
    for (const Diagnostic& one : diagnostics.sorted())
        FAIL_CHECK(describe(one));
    return records;
}

} // namespace

TEST_CASE("a dye with nothing recorded is unknown, not no", "[records]") {
    const Records records = read("dyes: [{id: sloe, name: Sloe, line: Fenlight acid}]");
    const Dye& dye = records.dye("sloe");
    CHECK(dye.code == "sloe"); // the id where none is recorded
    CHECK_FALSE(dye.bleeds.has_value());
    CHECK_FALSE(dye.fluorescent.has_value());
    CHECK_FALSE(dye.breaks_into);
    CHECK_FALSE(dye.hazards);
    CHECK_FALSE(dye.speckle);
    CHECK_FALSE(dye.opened);
    CHECK(dye.status == DyeStatus::current);
}

TEST_CASE("an empty list is a no", "[records]") {
    const Records records = read("dyes: [{id: sloe, name: Sloe, line: L, breaks into: [], hazards: [], bleeds: no}]");
    const Dye& dye = records.dye("sloe");
    REQUIRE(dye.breaks_into);
    CHECK(dye.breaks_into->empty());
    REQUIRE(dye.hazards);
    CHECK(dye.hazards->empty());
    CHECK(dye.bleeds == false);
}

TEST_CASE("a date written as unknown is not the same as none", "[records]") {
    const Records records = read("dyes:\n  - {id: a, name: A, line: L, opened: unknown}\n"
                                 "  - {id: b, name: B, line: L, opened: 2025-09}\n");
    CHECK(records.dye("a").opened == RecordedDate{UnknownDate{}});
    CHECK(records.dye("b").opened == RecordedDate{Date{2025, 9, 0}});
}

TEST_CASE("colours keep the space they were recorded in", "[records]") {
    const Records records =
        read("bases: [{id: q, name: Q, fibre: {wool: 100 %}, skein: {weight: 100 g, length: 400 m}}]\n"
             "dyes:\n  - id: a\n    name: A\n    line: L\n    swatches:\n"
             "      - {depth: 1 %, base: q, colour: \"#ff0000\"}\n"
             "      - {depth: 2 %, base: q, colour: \"LAB( 31.5  12 -24 )\", colour from: photo}\n"
             "      - {depth: 3 %, base: q}\n");
    const auto& swatches = records.dye("a").swatches;
    REQUIRE(swatches.size() == 3);
    CHECK(std::get<Rgb>(swatches[0].colour->value) == Rgb{1, 0, 0});
    CHECK(std::get<Lab>(swatches[1].colour->value) == Lab{31.5, 12, -24});
    CHECK(swatches[1].colour_source == ColourSource::photo);
    CHECK(swatches[1].depth == percent(2));
    CHECK(swatches[1].colour->spot.line == 8);
    CHECK_FALSE(swatches[2].colour);
}

TEST_CASE("parts keep their order, and say which of them are dyes", "[records]") {
    const Records records =
        read("dyes: [{id: sloe, name: S, line: L}, {id: haw, name: H, line: L}]\n"
             "ingredients: [{id: citric, name: citric acid}]\n"
             "jars:\n  - {id: a, dye: sloe, parts: {salt: 4, dye: 1, citric: 0.5, haw: 2}, by: volume,"
             " diameter: 42 mm, height: 70 mm}\n"
             "  - {id: b, parts: {haw: 10 g, salt: 1.5 oz}, by: weight, diameter: 42 mm,"
             " height: 70 mm}\n");
    const auto& parts = records.jars[0].parts;
    REQUIRE(parts.size() == 4);
    CHECK(parts[0].id.value == "salt");
    CHECK(parts[1].id.value == "sloe"); // what the word `dye` means
    CHECK(parts[1].is_dye);
    CHECK_FALSE(parts[2].is_dye);
    CHECK(parts[2].parts == 0.5);
    CHECK(parts[3].is_dye);
    CHECK_FALSE(parts[3].mass);
    CHECK(records.jars[0].basis == Basis::volume);
    CHECK(records.jars[1].parts[1].mass->number() == Approx(42.5242846875));
    CHECK(records.jars[1].parts[1].parts == records.jars[1].parts[1].mass->number());
    CHECK(records.jars[1].code == "b");
}

TEST_CASE("salt is known without being recorded, and as recorded where it is", "[records]") {
    CHECK(read("dyes: []").ingredient("salt").name == "salt");
    CHECK(read("ingredients: [{id: salt, name: flake salt}]").ingredient("salt").name == "flake salt");
}

TEST_CASE("lots keep what looks like numbers and dates as text", "[records]") {
    const Records records =
        read("studio: {name: Q, currency: EUR}\n"
             "bases: [{id: q, name: Q, fibre: {wool: 100 %}, skein: {weight: 100 g, length: 400 m}}]\n"
             "lots:\n  - {id: 0077, colourway: No, base: q, skeins: 12, price: 26.5, pots: [5, 7],"
             " spoilt: [3]}\n"
             "  - {id: 2024-05-01, colourway: 1e3, base: q, skeins: 1}\n");
    CHECK(records.lots[0].id.value == "0077");
    CHECK(records.lots[0].colourway == "No");
    CHECK(records.lots[0].price->minor == 2650);
    CHECK(records.lots[0].pots == std::vector{5, 7});
    CHECK(records.lots[0].spoilt == std::vector{3});
    CHECK(records.lots[1].id.value == "2024-05-01");
    CHECK(records.lots[1].colourway == "1e3");
    CHECK_FALSE(records.lots[1].price);
}

TEST_CASE("fibres keep the order written, whatever adds up to a hundred", "[records]") {
    const Records records =
        read("bases: [{id: q, name: Q, fibre: {silk: 35 %, wool: 65 %}, skein: {weight: 100 g, length: 437 yd},"
             " care: [no bleach, hand wash]}]");
    const Base& base = records.base("q");
    REQUIRE(base.fibres.size() == 2);
    CHECK(base.fibres[0].name == "silk");
    CHECK(base.fibres[1].share == percent(65));
    CHECK(base.skein.length.value.in_m() == Approx(399.5928));
    REQUIRE(base.care.size() == 2);
    CHECK(base.care[0].key == "no bleach"); // as written; printing puts it in order
}

TEST_CASE("what is said of the wool, and what is not", "[records]") {
    const Records records =
        read("studio: {name: Q, care: words and symbols}\n"
             "bases:\n  - {id: a, name: A, fibre: {wool: 100 %}, skein: {weight: 100 g, length: 437 yd}}\n"
             "  - {id: b, name: B, fibre: {wool: 100 %}, skein: {weight: 100 g, length: 437 yd}, superwash: yes,"
             " name the breed: no, virgin wool: yes, spun: carded, care: [no wash], care from: own test}\n"
             "  - {id: c, name: C, fibre: {wool: 100 %}, skein: {weight: 100 g, length: 437 yd}, superwash: 50 %}\n");
    CHECK(records.studio.care_style == CareStyle::both);
    const Base& silent = records.base("a");
    CHECK_FALSE(silent.superwash);
    CHECK_FALSE(silent.names_breed.has_value());
    CHECK_FALSE(silent.virgin_wool.has_value());
    CHECK_FALSE(silent.spinning);
    CHECK_FALSE(silent.care_source);
    CHECK(silent.care_spot.line == 3);
    const Base& full = records.base("b");
    CHECK(full.superwash == Superwash{true});
    CHECK(full.names_breed == false);
    CHECK(full.virgin_wool == true);
    CHECK(full.spinning == Spinning::carded);
    CHECK(full.care_source == CareSource::own_test);
    CHECK(full.care_spot.column > 100);
    CHECK(records.base("c").superwash == Superwash{percent(50)});
}

TEST_CASE("a base remembers in which units it was written", "[records]") {
    const Records records =
        read("bases:\n  - {id: a, name: A, fibre: {wool: 100 %}, skein: {weight: 3.5 oz, length: 437 yd}}\n"
             "  - {id: b, name: B, fibre: {wool: 100 %}, skein: {weight: 100 g, length: 437 yd}}\n"
             "  - {id: c, name: C, fibre: {wool: 100 %}, skein: {weight: 100 g, length: 400 m}}\n"
             "  - {id: d, name: D, fibre: {wool: 100 %}, skein: {weight: 100 g (3.5 oz), length: 437 yd / 400 m}}\n");
    const auto written = [&](const char* id) {
        const auto& [mass, length] = records.base(id).skein;
        return std::array{mass.metric.has_value(), mass.imperial.has_value(), length.metric.has_value(),
                          length.imperial.has_value()};
    };
    CHECK(written("a") == std::array{false, true, false, true});
    CHECK(written("b") == std::array{true, false, false, true});
    CHECK(written("c") == std::array{true, false, true, false});
    CHECK(written("d") == std::array{true, true, true, true});
    const SkeinSize& both = records.base("d").skein;
    CHECK(both.mass.value == grams(100));
    CHECK(both.mass.imperial->number() == Approx(28.349523125 * 3.5));
    CHECK(both.length.value.in_m() == Approx(399.5928)); // the first is the one that is worked with
    CHECK(*both.length.metric == metres(400));
}

TEST_CASE("a lot may have skeins of other weights", "[records]") {
    const Records records =
        read("studio: {name: S, currency: EUR}\n"
             "bases: [{id: q, name: Q, fibre: {wool: 100 %}, skein: {weight: 100 g, length: 400 m}}]\n"
             "lots: [{id: a, colourway: C, base: q, skeins: 12, skein weight: 20 g,"
             " odd skeins: {7: 63 g, 9: {weight: 2 oz, price: 16.00}}}]\n");
    const Lot& lot = records.lots.at(0);
    CHECK(lot.skein_mass->value == grams(20));
    REQUIRE(lot.odd_skeins.size() == 2);
    CHECK(lot.odd_skeins[0].number == 7);
    CHECK(lot.odd_skeins[0].mass.value == grams(63));
    CHECK_FALSE(lot.odd_skeins[0].price);
    CHECK(lot.odd_skeins[1].number == 9);
    CHECK(lot.odd_skeins[1].mass.imperial.has_value());
    CHECK(lot.odd_skeins[1].price->minor == 1600);
}

TEST_CASE("hazard codes are kept as the sheet gives them, joined without blanks", "[records]") {
    const Records records = read("dyes: [{id: a, name: A, line: L, hazards: [H302 + H312, EUH208, H360FD]}]");
    const auto& hazards = *records.dye("a").hazards;
    REQUIRE(hazards.size() == 3);
    CHECK(hazards[0].code == "H302+H312");
    CHECK(hazards[1].code == "EUH208");
    CHECK(hazards[2].code == "H360FD");
}

TEST_CASE("what is unsound is left out and the rest is read", "[records]") {
    Diagnostics diagnostics;
    const auto file = std::make_shared<const SourceFile>(
        SourceFile{"a.yaml", "dyes:\n  - {name: no id, line: L}\n  - {id: a, name: A, line: L, bleeds: perhaps}\n"});
    const Records records = read_records({file}, diagnostics);
    CHECK(diagnostics.errors() == 2);
    REQUIRE(records.dyes.size() == 1);
    CHECK_FALSE(records.dyes[0].bleeds.has_value());
}

TEST_CASE("references are let pass when a file could not be opened", "[records]") {
    Diagnostics diagnostics;
    diagnostics.error({}, "the file cannot be opened");
    const auto file = std::make_shared<const SourceFile>(
        SourceFile{"a.yaml", "lots:\n  - {id: a, colourway: H, base: q, skeins: 12, price: 26, dyes: [sloe]}\n"});
    CHECK(read_records({file}, diagnostics).lots.size() == 1);
    CHECK(diagnostics.sorted().size() == 1);
}

TEST_CASE("how strong a stock is keeps the way in which it was stated", "[records]") {
    const Records records = read(R"(
bases: [{id: q, name: Q, fibre: {wool: 100 %}, skein: {weight: 100 g, length: 400 m}}]
dyes: [{id: sloe, name: Sloe, line: L}]
lots:
  - id: a
    colourway: H
    base: q
    skeins: 4
    liquor: "1 : 30"
    recipe:
      - {dye: sloe, depth: 1 %}
      - {dye: sloe, depth: 1 %, from stock: 2 %}
      - {dye: sloe, depth: 1 %, from stock: 2 g in 100 mL}
      - {dye: sloe, depth: 1 %, from stock: 2 % by weight}
      - {dye: sloe, depth: 1 %, from stock: 2 g in 100 g}
)");
    const Recipe& recipe = records.lots[0].recipe;
    const auto from = [&](std::size_t line) { return std::get<DyeLine>(recipe.lines[line].what).from; };
    CHECK(std::holds_alternative<Powder>(from(0)));
    CHECK(std::get<WeightInVolume>(from(1)).strength == percent(2));
    CHECK(std::get<WeightInVolume>(from(2)).strength == percent(2));
    CHECK(std::get<WeightInWeight>(from(3)).strength == percent(2));
    CHECK(std::get<WeightInWeight>(from(4)).strength == percent(2));
    CHECK(recipe.liquor.value().water == 30);
    CHECK_FALSE(recipe.dry_weight);
    CHECK_FALSE(recipe.pot_holds);
    CHECK(recipe.acid.empty());
}

TEST_CASE("how long a jar keeps is not known unless it is written", "[records]") {
    const std::string jar = "dyes: [{id: sloe, name: Sloe, line: L}]\n"
                            "jars: [{id: j, dye: sloe, parts: {dye: 1}, by: weight, diameter: 42 mm, height: 70 mm";
    CHECK_FALSE(read(jar + "}]").jars[0].keeps);
    CHECK_FALSE(read(jar + "}]").studio.jars_keep);
    CHECK(read(jar + ", keeps: 18 months}]").jars[0].keeps.value().count == 18);
    CHECK(read(jar + ", keeps: 2 years}]").jars[0].keeps.value().count == 24);
}
