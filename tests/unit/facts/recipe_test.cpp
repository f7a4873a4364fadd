#include "facts/recipe.h"

#include "english.h"
#include "facts/pots.h"
#include "facts/recipe_wording.h"
#include "studio_records.h"

#include <catch2/catch.hpp>

using namespace dyeleaf;

namespace {

RecipeLine dye_line(const std::string& id, double depth, DyeForm from = Powder{}) {
    return {DyeLine{{id, {}}, percent(depth), from}, {}, {}};
}

RecipeLine jar_line(const std::string& id, double per_skein) {
    return {JarLine{{id, {}}, grams(per_skein), {}}, {}, {}};
}

// A lot of plain skeins of 100 g each, with nothing but these lines.
Lot lot_of(int skeins, std::vector<RecipeLine> lines) {
    Lot lot;
    lot.id.value = "26-117";
    lot.base.value = "plain-sock";
    lot.skeins = skeins;
    lot.recipe.lines = std::move(lines);
    return lot;
}

double in_grams(const Amount& amount) {
    return std::get<Mass>(amount).number();
}

double in_millilitres(const Amount& amount) {
    return std::get<Volume>(amount).number();
}

} // namespace

// 487 g at 0.75 % from a stock of 1 % is a dyer's own figure (365 mL); the rest is arithmetic.
TEST_CASE("a recipe is scaled by the dry weight, not by the skeins", "[facts]") {
    const Records records = studio_records();
    Lot lot = lot_of(5, {dye_line("sloe", 0.75, WeightInVolume{percent(1)}), dye_line("ember", 0.75),
                         dye_line("ember", 0.75, WeightInWeight{percent(1)})});
    CHECK(worked_recipe(records, lot).dry_weight == grams(500));
    CHECK_FALSE(worked_recipe(records, lot).weighed);
    lot.recipe.dry_weight = grams(487);
    lot.recipe.liquor = LiquorRatio{30};
    const WorkedRecipe recipe = worked_recipe(records, lot);
    CHECK(recipe.weighed);
    CHECK(in_millilitres(recipe.lines[0].total) == Approx(365));
    CHECK(in_grams(recipe.lines[1].total) == Approx(3.7));
    CHECK(in_grams(recipe.lines[2].total) == Approx(365.3));
    CHECK(recipe.depth.value().number() == Approx(2.25));
    CHECK(recipe.bath.value().number() == Approx(14610));
    // 3.7 g in place of 3.6525 g.
    CHECK(recipe.lines[1].result.value().number() == Approx(0.7598).margin(5e-5));
}

TEST_CASE("a recipe is shared out over the pots, each part to what can be weighed", "[facts]") {
    const Records records = studio_records();
    Lot lot = lot_of(
        10, {dye_line("sloe", 0.2), dye_line("ember", 1, WeightInVolume{percent(1)}), jar_line("sloe-shaker", 1.5)});
    lot.recipe.pot_holds = 4;
    lot.recipe.liquor = LiquorRatio{30};
    lot.recipe.acid = {{"citric acid", percent(3)}, {"vinegar", PerHundredGrams{millilitres(50)}}};
    const WorkedRecipe recipe = worked_recipe(records, lot);
    CHECK(recipe.pots == std::vector{4, 3, 3});
    REQUIRE(recipe.lines[0].per_pot.size() == 3);
    CHECK(in_grams(recipe.lines[0].per_pot[0]) == Approx(0.8));
    CHECK(in_grams(recipe.lines[0].per_pot[1]) == Approx(0.6));
    CHECK(in_grams(recipe.lines[0].total) == Approx(2.0));
    CHECK(in_millilitres(recipe.lines[1].per_pot[2]) == Approx(300));
    CHECK(in_grams(recipe.lines[2].per_pot[0]) == Approx(6));
    CHECK(in_grams(recipe.lines[2].total) == Approx(15));
    // Half of the mix is dye: 7.5 g on 1000 g.
    CHECK(recipe.lines[2].depth.value().number() == Approx(0.75));
    CHECK(recipe.depth.value().number() == Approx(1.95));
    CHECK(recipe.bath_per_pot[0].number() == Approx(12000));
    CHECK(in_grams(recipe.acid[0].total) == Approx(30));
    CHECK(recipe.acid[0].as_vinegar.value().number() == Approx(562.6).margin(0.2));
    CHECK(in_millilitres(recipe.acid[1].total) == Approx(500));
    CHECK_FALSE(recipe.acid[1].as_vinegar);
}

// Dyers' own figures: 1.5 g of a mix of 20 % on 100 g of yarn is 0.30 g of dye, 0.3 %.
TEST_CASE("what is shaken on has a depth where the mix has a strength", "[facts]") {
    Records records = studio_records();
    Lot lot = lot_of(1, {jar_line("sloe-shaker", 1.5)});
    std::get<JarLine>(lot.recipe.lines[0].what).strength = percent(20);
    CHECK(worked_recipe(records, lot).lines[0].depth.value().number() == Approx(0.3));
    lot = lot_of(1, {jar_line("two-spoons", 1.5), dye_line("sloe", 1)});
    const WorkedRecipe recipe = worked_recipe(records, lot);
    CHECK_FALSE(recipe.lines[0].depth);
    CHECK_FALSE(recipe.depth);
    CHECK(recipe.pots == std::vector{1});
}

TEST_CASE("what rests on bulk densities stays an estimate in a recipe", "[facts]") {
    Records records = studio_records();
    for (Dye& one : records.dyes)
        one.bulk_density = grams_per_millilitre(0.45);
    for (Ingredient& one : records.ingredients)
        one.bulk_density = grams_per_millilitre(1.217);
    const Lot lot = lot_of(1, {jar_line("two-spoons", 1.5), dye_line("sloe", 1)});
    const WorkedRecipe recipe = worked_recipe(records, lot);
    REQUIRE(recipe.depth);
    CHECK(recipe.depth_estimated);
    CHECK(depth_words(english(), recipe.lines[0]).starts_with("≈"));
    CHECK(depth_words(english(), recipe.lines[1]) == "1\u00a0%");
    CHECK(source_words(english(), recipe.lines[0]).find("≈") != std::string::npos);
}

TEST_CASE("a lot without a recipe has a weight and nothing else", "[facts]") {
    const Records records = studio_records();
    const WorkedRecipe recipe = worked_recipe(records, lot_of(6, {}));
    CHECK(recipe.lines.empty());
    CHECK_FALSE(recipe.depth);
    CHECK_FALSE(recipe.bath);
    CHECK(recipe.dry_weight == grams(600));
}

TEST_CASE("pots are as recorded, or split evenly", "[facts]") {
    Lot lot = lot_of(10, {});
    CHECK(pots_of(lot).empty());
    lot.recipe.pot_holds = 12;
    CHECK(pots_of(lot).empty());
    lot.recipe.pot_holds = 4;
    CHECK(pots_of(lot) == std::vector{4, 3, 3});
    lot.pots = {6, 4};
    CHECK(pots_of(lot) == std::vector{6, 4});
}

TEST_CASE("the dyes in a lot are those it names and those of its recipe", "[facts]") {
    const Records records = studio_records();
    Lot lot = lot_of(1, {dye_line("ember", 1), jar_line("sloe-shaker", 1)});
    lot.dyes = {{"ember", {}}};
    const auto dyes = dyes_in(records, lot);
    REQUIRE(dyes.size() == 2);
    CHECK(dyes[0]->id.value == "ember");
    CHECK(dyes[1]->id.value == "sloe");
}
