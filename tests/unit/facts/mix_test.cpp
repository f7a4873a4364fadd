#include "english.h"
#include "facts/mix.h"

#include "facts/jar_wording.h"
#include "studio_records.h"

#include <catch2/catch.hpp>

using namespace dyeleaf;

namespace {

MixPart dye(double parts, std::optional<double> bulk = std::nullopt, std::optional<double> weighed = std::nullopt) {
    MixPart part;
    part.name = "Sloe";
    part.is_dye = true;
    part.parts = parts;
    if (bulk) part.bulk = grams_per_millilitre(*bulk);
    if (weighed) part.weighed = grams(*weighed);
    return part;
}

MixPart salt(double parts, std::optional<double> bulk = std::nullopt, std::optional<double> weighed = std::nullopt) {
    MixPart part = dye(parts, bulk, weighed);
    part.name = "salt";
    part.is_dye = false;
    return part;
}

constexpr MixAmount no_amount{std::nullopt, std::nullopt, grams(0.1)};

MixAmount batch(double mass, double step = 0.1) {
    return {grams(mass), std::nullopt, grams(step)};
}

double strength(const Mix& mix) {
    return mix.strength.value().number();
}

} // namespace

// Dye to salt by weight, the share of dye: arithmetic.
TEST_CASE("a mix by weight has the strength of its parts", "[facts]") {
    const auto [parts, expected] = GENERATE(
        table<double, double>({{1, 50}, {4, 20}, {9, 10}, {10, 9.0909}, {19, 5}, {49, 2}, {100, 0.9901}, {999, 0.1}}));
    CHECK(strength(work_out({dye(1), salt(parts)}, Basis::weight, no_amount)) == Approx(expected).margin(5e-5));
}

// Bulk densities of dye powder 0.77 to 0.99 g/mL and of fine table salt 1.28 g/mL: measured by dyers, with kitchen
// scales. The other two pairs are arithmetic on 0.45/1.217 and 0.50/1.20.
TEST_CASE("a mix by volume needs bulk densities", "[facts]") {
    const auto [parts, dye_bulk, salt_bulk, expected] =
        GENERATE(table<double, double, double, double>({{1, 0.77, 1.28, 37.56},
                                                        {1, 0.99, 1.28, 43.61},
                                                        {2, 0.77, 1.28, 23.12},
                                                        {2, 0.99, 1.28, 27.89},
                                                        {4, 0.77, 1.28, 13.07},
                                                        {4, 0.99, 1.28, 16.20},
                                                        {9, 0.77, 1.28, 6.266},
                                                        {9, 0.99, 1.28, 7.914},
                                                        {4, 0.9, 0.76, 22.84}, // flake salt
                                                        {9, 0.45, 1.217, 3.946},
                                                        {1, 0.45, 1.217, 26.995},
                                                        {9, 0.50, 1.20, 4.4248},
                                                        {1, 0.50, 1.20, 29.412}}));
    const Mix mix = work_out({dye(1, dye_bulk), salt(parts, salt_bulk)}, Basis::volume, no_amount);
    CHECK(strength(mix) == Approx(expected).margin(5e-3));
    CHECK(mix.shares_estimated);
}

TEST_CASE("a mix by volume without them has no strength", "[facts]") {
    const Mix mix = work_out({dye(1), salt(1, 1.28)}, Basis::volume, batch(36));
    CHECK_FALSE(mix.strength);
    CHECK_FALSE(mix.parts[0].mass);
    CHECK_FALSE(mix.parts[0].share);
    CHECK(mix.total == grams(36));
    CHECK(strength_words(english(), mix) == "by volume: strength unknown");
    CHECK(recipe_words(english(), mix) == "1\u00a0part Sloe + 1\u00a0part salt, by volume: strength unknown");
    CHECK_FALSE(strength_figure(english(), mix));
}

TEST_CASE("a batch is shared out in steps of the scale", "[facts]") {
    const Mix mix = work_out({dye(1), salt(4)}, Basis::weight, batch(50));
    CHECK(mix.parts[0].mass == grams(10));
    CHECK(mix.parts[1].mass == grams(40));
    CHECK_FALSE(mix.masses_estimated);
    CHECK_FALSE(rounding_shows(mix));
    // As common practice has it: 20 % dye = 10 g dye + 40 g salt.
    CHECK(recipe_words(english(), mix) == "20\u00a0% dye = 10\u00a0g Sloe + 40\u00a0g salt");
    CHECK(ratio_words(english(), mix) == "1\u00a0part Sloe : 4\u00a0parts salt, by weight");
    CHECK(strength_words(english(), mix) == "20\u00a0% dye by weight");
}

// A dyer's own example: on a scale of 0.1 g, 0.28 g becomes 0.3 g, 7 % more.
TEST_CASE("rounding that changes the strength shows", "[facts]") {
    const Mix coarse = work_out({dye(0.28), salt(9.72)}, Basis::weight, batch(10));
    CHECK(coarse.intended_strength.value().number() == Approx(2.8));
    CHECK(strength(coarse) == Approx(3.0));
    CHECK(rounding_shows(coarse));
    CHECK_FALSE(rounding_shows(work_out({dye(0.28), salt(9.72)}, Basis::weight, batch(10, 0.01))));
}

TEST_CASE("what was weighed in stays as it was and decides", "[facts]") {
    const Mix mix = work_out({dye(1, {}, 4.25), salt(9, {}, 37.8)}, Basis::weight, batch(42));
    CHECK(mix.parts[0].mass == grams(4.25));
    CHECK(mix.total.value().number() == Approx(42.05));
    CHECK(strength(mix) == Approx(100 * 4.25 / 42.05));
    CHECK(ratio_words(english(), mix) == "4.25\u00a0g Sloe : 37.8\u00a0g salt, by weight");
    const Mix by_spoon = work_out({dye(1, {}, 5), salt(1, {}, 5)}, Basis::volume, no_amount);
    CHECK(strength(by_spoon) == 50);
    CHECK_FALSE(by_spoon.shares_estimated);
}

// Two thirds of 60 mL is 40 mL. The mix at 50 % weighs 1 / (0.5/0.45 + 0.5/1.217) g/mL = 0.6571 g/mL: 26.28 g.
TEST_CASE("grams are estimated from what the jar holds where bulk densities are recorded", "[facts]") {
    const MixAmount jar{std::nullopt, millilitres(60), grams(0.1)};
    const Mix mix = work_out({dye(1, 0.45), salt(1, 1.217)}, Basis::weight, jar);
    CHECK(mix.masses_estimated);
    CHECK(mix.parts[0].mass == grams(13));
    CHECK(mix.total == grams(26));
    CHECK(strength(mix) == 50);
    CHECK(recipe_words(english(), mix) == "50\u00a0% dye ≈ 13\u00a0g Sloe + 13\u00a0g salt");
    CHECK(mass_words(english(), mix, mix.parts[0]) == "≈\u00a013\u00a0g");
    CHECK_FALSE(work_out({dye(1, 0.45), salt(1)}, Basis::weight, jar).total);

    // By volume: 20 mL of each.
    const Mix spoons = work_out({dye(1, 0.45), salt(1, 1.217)}, Basis::volume, jar);
    CHECK(spoons.parts[0].mass.value().number() == Approx(9));
    CHECK(spoons.parts[1].mass.value().number() == Approx(24));
    CHECK(recipe_words(english(), spoons) == "about 27\u00a0% dye ≈ 9\u00a0g Sloe + 24\u00a0g salt");
    CHECK(strength_words(english(), spoons) == "about 27\u00a0% dye by weight, measured by volume");
    CHECK(strength_figure(english(), spoons) == "≈\u00a027\u00a0%");
}

// Common practice: 120 mL at 50 % hold about 83 g and at 20 % about 92 g when 65 % full. Two thirds is 2.6 % more.
TEST_CASE("the estimate agrees with what dyers find in a jar", "[facts]") {
    const MixAmount jar{std::nullopt, millilitres(120), grams(0.1)};
    const Mix half = work_out({dye(1, 0.91), salt(1, 1.28)}, Basis::weight, jar);
    CHECK(half.total.value().number() == Approx(83 * 1.026).margin(1));
    const Mix fifth = work_out({dye(1, 0.91), salt(4, 1.28)}, Basis::weight, jar);
    CHECK(fifth.total.value().number() == Approx(92 * 1.026).margin(1));
    CHECK(fifth.parts[0].mass.value().number() == Approx(18.5).margin(0.6));
}

TEST_CASE("a batch by volume is estimated part by part, and is itself as recorded", "[facts]") {
    const Mix mix = work_out({dye(1, 0.5), salt(1, 1.2)}, Basis::volume, batch(34));
    CHECK(mix.masses_estimated);
    CHECK_FALSE(mix.total_estimated);
    CHECK(mix.parts[0].mass == grams(10));
    CHECK(total_words(english(), mix) == "34\u00a0g");
}

TEST_CASE("a jar's mix has names that cannot be taken for one another", "[facts]") {
    Records records = studio_records();
    records.dyes[1].name = "Sloe";
    const Mix mix = mix_of(records, records.jars[1]);
    CHECK(mix.parts[0].name == "Sloe (Tarnbeck milling)");
    CHECK(mix.parts[1].name == "Sloe (Fenlight acid)");
    CHECK(mix.parts[2].name == "salt");
}

// 18 g at 0.45 and at 1.217 g/mL: 40 mL and 14.8 mL, arithmetic.
TEST_CASE("parts have a volume where it can be known", "[facts]") {
    const Mix weighed = work_out({dye(1, 0.45), salt(1, 1.217)}, Basis::weight, batch(36));
    CHECK(weighed.parts[0].volume.value().number() == Approx(40));
    CHECK(weighed.parts[1].volume.value().number() == Approx(14.79).margin(0.005));
    CHECK(fill_of(weighed, millilitres(60)).value().number() == Approx(91.3).margin(0.05));
    CHECK_FALSE(fill_of(work_out({dye(1, 0.45), salt(1)}, Basis::weight, batch(36)), millilitres(60)));
    // Spoons fill two thirds of the jar in their own proportion, whatever they weigh.
    const Mix spoons = work_out({dye(1), salt(3)}, Basis::volume, {std::nullopt, millilitres(60), grams(0.1)});
    CHECK(spoons.parts[0].volume.value().number() == Approx(10));
    CHECK(spoons.parts[1].volume.value().number() == Approx(30));
}

// (m1 f1 + m2 f2) / (m1 + m2): 12 g at 50 % and 20 g at 10 % are 8 g of dye in 32 g.
TEST_CASE("topping up with another strength gives a third", "[facts]") {
    Records records = studio_records();
    Jar jar = records.jars[0];
    jar.topped_up = {{UnknownDate{}, grams(10), {}, {}, {}}};
    CHECK(strength(mix_of(records, jar)) == 50);
    TopUp weaker{UnknownDate{}, grams(20), {}, grams(12), {part("sloe", true, 1), part("salt", false, 9)}};
    jar.topped_up = {weaker};
    const Mix mix = mix_of(records, jar);
    CHECK(strength(mix) == Approx(25));
    CHECK(mix.parts[0].mass.value().number() == Approx(8));
    CHECK(mix.parts[1].mass.value().number() == Approx(24));
    CHECK(mix.total.value().number() == Approx(32));
    CHECK(mixes_of(records, jar).size() == 2);

    // Topped up once more as it was first filled: 10 g at 25 % and 10 g at 50 %.
    jar.topped_up = {weaker, {UnknownDate{}, grams(10), {}, grams(10), {}}};
    CHECK(strength(mix_of(records, jar)) == Approx(37.5));
    jar.topped_up[1].left = std::nullopt;
    CHECK_FALSE(mix_of(records, jar).strength);
    CHECK_FALSE(mix_of(records, jar).parts[0].mass);
}

// At 0.45 and 1.217 g/mL a spoon of each is 27.0 % dye, one to three 11.0 %: 10 g of either are 3.80 g of dye in 20 g.
TEST_CASE("topping up a mix by volume leaves everything an estimate but the whole", "[facts]") {
    const Mix first = work_out({dye(1, 0.45), salt(1, 1.217)}, Basis::volume, batch(30));
    const Mix added = work_out({dye(1, 0.45), salt(3, 1.217)}, Basis::volume, no_amount);
    const Mix mix = topped_up(first, grams(10), added, grams(10), grams(0.1));
    CHECK(strength(mix) == Approx(18.99).margin(0.01));
    CHECK(total_words(english(), mix) == "20\u00a0g");
    CHECK(strength_words(english(), mix) == "about 19\u00a0% dye by weight, measured by volume");
    CHECK(mass_words(english(), mix, mix.parts[0]) == "≈\u00a03.8\u00a0g");
    CHECK(ratio_words(english(), mix) == "≈\u00a03.8\u00a0g Sloe : ≈\u00a016.2\u00a0g salt, by weight");
    CHECK(recipe_words(english(), mix) == "about 19\u00a0% dye ≈ 3.8\u00a0g Sloe + 16.2\u00a0g salt");
}
