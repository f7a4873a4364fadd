#include "facts/check_mix.h"
#include "facts/check_recipe.h"
#include "studio_records.h"

#include <catch2/catch.hpp>

using namespace dyeleaf;

namespace {

using Texts = std::vector<std::string>;

template <class Check> Texts said(const Check& check) {
    Diagnostics diagnostics;
    check(diagnostics);
    Texts texts;
    for (const Diagnostic& one : diagnostics.sorted()) {
        texts.push_back(one.message);
        texts.push_back(one.help);
    }
    return texts;
}

Jar plain_jar(double dye, double salt, double batch) {
    Jar jar;
    jar.id.value = "s";
    jar.parts = {part("sloe", true, dye), part("salt", false, salt)};
    jar.batch = grams(batch);
    return jar;
}

Texts of_jar(const Jar& jar, const Records& records = studio_records()) {
    return said([&](Diagnostics& diagnostics) { check_mix(records, jar, diagnostics); });
}

Texts of_lot(const Lot& lot) {
    const Records records = studio_records();
    return said([&](Diagnostics& diagnostics) { check_recipe(records, lot, diagnostics); });
}

Lot lot_of(std::vector<RecipeLine> lines) {
    Lot lot;
    lot.id.value = "l";
    lot.base.value = "plain-sock";
    lot.skeins = 10;
    lot.recipe.lines = std::move(lines);
    return lot;
}

} // namespace

TEST_CASE("a sound jar is not warned of", "[facts]") {
    CHECK(of_jar(plain_jar(1, 1, 36)).empty());
}

// The label says so; the dyer need not be told each time.
TEST_CASE("a mix by volume without bulk densities is no mistake", "[facts]") {
    Jar jar = plain_jar(1, 4, 36);
    jar.basis = Basis::volume;
    CHECK(of_jar(jar).empty());
}

// 10 g at 5 %: half a gram, five steps of 0.1 g.
TEST_CASE("a part of less than ten steps of the scale is warned of", "[facts]") {
    CHECK(of_jar(plain_jar(1, 19, 10)) == Texts{"the 0.5 g of Sloe in jar “s” are less than ten steps of a scale that "
                                                "shows 0.1 g",
                                                "mix twice as much, or weigh it on a finer scale"});
    CHECK(of_jar(plain_jar(1, 19, 20)).empty());
    CHECK(is_too_small(grams(0.9), grams(0.1)));
    CHECK_FALSE(is_too_small(grams(0.1) * 10, grams(0.1)));
    CHECK_FALSE(is_too_small(grams(0.3), grams(0.03)));
}

TEST_CASE("rounding that changes the strength is warned of once", "[facts]") {
    CHECK(of_jar(plain_jar(0.28, 9.72, 10)) ==
          Texts{"weighed in steps of 0.1 g, jar “s” holds 3 % dye instead of 2.8 %",
                "mix a larger batch, or weigh it on a finer scale"});
}

// 20 g of each at 0.45 and 1.2 g/mL are 61 mL: all of a jar of 60 mL.
TEST_CASE("a jar that is too full to mix is warned of", "[facts]") {
    Records records = studio_records();
    Jar jar = plain_jar(1, 1, 40);
    jar.holds = millilitres(60);
    CHECK(of_jar(jar, records).empty());
    records.ingredients[0].bulk_density = grams_per_millilitre(1.2);
    CHECK(of_jar(jar, records) == Texts{"jar “s” is about 102 % full and will not mix",
                                        "leave 30 to 40 % of it empty: at most 27 g, or a larger jar; reckoned from "
                                        "the bulk densities"});
    jar.holds = millilitres(90);
    CHECK(of_jar(jar, records).empty());
}

TEST_CASE("a strength that nobody knows since a topping up is warned of", "[facts]") {
    Jar jar = plain_jar(1, 1, 36);
    jar.topped_up = {{UnknownDate{}, grams(10), {}, {}, {}}};
    CHECK(of_jar(jar).empty());
    jar.topped_up = {{UnknownDate{}, grams(20), {}, grams(12), {part("sloe", true, 1), part("salt", false, 9)}},
                     {UnknownDate{}, grams(10), {}, {}, {}}};
    CHECK(of_jar(jar) ==
          Texts{"jar “s” was topped up after its strength had changed, and nobody can say how strong it is now",
                "write how much was left in it and how much was added, as in left: 12 g, added: 20 g"});
}

TEST_CASE("a jar that holds more than was mixed is warned of", "[facts]") {
    Jar jar = plain_jar(1, 1, 36);
    jar.tare = grams(78.4);
    jar.weighed = Weighing{UnknownDate{}, grams(114)};
    CHECK(of_jar(jar).empty());
    jar.weighed->gross = grams(126);
    CHECK(of_jar(jar) == Texts{"jar “s” holds 47.6 g, but only 36 g were mixed",
                               "look at “gross”, “tare” and “batch” again; lids get swapped"});
}

TEST_CASE("a jar past its date is warned of", "[facts]") {
    const Records records = studio_records();
    const auto on = [&](Date today) {
        return said([&](Diagnostics& diagnostics) { check_use_by(records, records.jars[0], today, diagnostics); });
    };
    CHECK(on({2027, 11, 30}).empty());
    CHECK(on({2027, 12, 1}) == Texts{"jar “sloe-shaker” was to be used by 2027-11",
                                     "try it on a scrap, then write a new date; or mix it anew"});
    Jar undated = plain_jar(1, 1, 36);
    undated.keeps = Months{12};
    CHECK(said([&](Diagnostics& diagnostics) {
              check_use_by(records, undated, {2027, 1, 1}, diagnostics);
          }) == Texts{"jar “s” keeps for a time, but nobody knows since when",
                      "write the day it was mixed, or a date of your own judgement: use by: 2027-06"});
}

// 0.05 % of 1000 g is 0.5 g: five steps of 0.1 g, or 50 mL of a stock of 1 %.
TEST_CASE("a line that is too small to weigh or measure is warned of", "[facts]") {
    CHECK(of_lot(lot_of({{DyeLine{{"ember", {}}, percent(0.05), Powder{}}, {}, {}}})) ==
          Texts{"the 0.5 g of Ember in lot “l” are less than ten steps of a scale that shows 0.1 g",
                "measure it from a stock: with “from stock: 1 %” it is 50 mL"});
    CHECK(of_lot(lot_of({{DyeLine{{"ember", {}}, percent(0.1), Powder{}}, {}, {}}})).empty());
    Lot in_pots = lot_of({{DyeLine{{"ember", {}}, percent(0.1), Powder{}}, {}, {}}});
    in_pots.recipe.pot_holds = 5;
    CHECK(of_lot(in_pots) ==
          Texts{"the 0.5 g of Ember in lot “l”, in a pot, are less than ten steps of a scale that shows 0.1 g",
                "measure it from a stock: with “from stock: 1 %” it is 50 mL"});
    CHECK(of_lot(lot_of({{DyeLine{{"ember", {}}, percent(0.0005), WeightInVolume{percent(1)}}, {}, {}}})) ==
          Texts{"the 0.5 mL of Ember in lot “l” are too little to measure well",
                "take it from a weaker stock, a tenth as strong: ten times the volume"});
}

TEST_CASE("a dry weight that is not that of the skeins is warned of", "[facts]") {
    Lot lot = lot_of({});
    lot.recipe.dry_weight = grams(1090);
    CHECK(of_lot(lot).empty());
    lot.recipe.dry_weight = grams(119);
    CHECK(of_lot(lot) == Texts{"lot “l” weighs 119 g dry, and its 10 skeins should weigh about 1000 g",
                               "look at “dry weight” and “skeins” again: the recipe goes by the weight"});
}
