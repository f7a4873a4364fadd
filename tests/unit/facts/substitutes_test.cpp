// Which dyes come nearest: like with like, and what is unknown fulfils no wish.
#include "facts/selection.h"
#include "facts/substitutes.h"
#include "studio_records.h"

#include <catch2/catch.hpp>

using namespace dyeleaf;

namespace {

// Pairs 1, 2, 3 and 25 of the table by Sharma, Wu and Dalal (2005): ΔE00 2.0425, 2.8615, 3.4412 from one blue.
constexpr Lab blue{50, 0, -82.7485};
constexpr Lab first{50, 2.6772, -79.7751};
constexpr Lab second{50, 3.1571, -77.2803};
constexpr Lab third{50, 2.8361, -74.0200};

Swatch measured(double depth, const std::string& base, std::optional<RecordedColour> colour) {
    Swatch made = swatch(depth, base, colour);
    made.colour_source = ColourSource::instrument;
    return made;
}

Dye dye_of(const std::string& id, std::vector<Swatch> swatches) {
    Dye dye = plain_dye(id, id, "Fenlight acid", id);
    dye.swatches = std::move(swatches);
    return dye;
}

struct Bench {
    Records records = studio_records();

    explicit Bench(std::vector<Dye> dyes) { records.dyes = std::move(dyes); }
    // Of the first dye.
    [[nodiscard]] Substitutes find(const Wishes& wishes = {}, std::optional<Percent> depth = {}) const {
        return find_substitutes(records, {&records.dyes.front(), depth, nullptr}, wishes);
    }
};

std::string ids(const Substitutes& found) {
    std::string text;
    for (const Substitute& one : found.ranked)
        text += one.dye->id.value + " ";
    return text;
}

Dye wanted() {
    return dye_of("w", {measured(1, "plain-sock", blue)});
}

} // namespace

TEST_CASE("the nearest comes first, equally near ones as recorded", "[facts]") {
    const Bench bench{
        {wanted(), dye_of("c", {measured(1, "plain-sock", third)}), dye_of("a", {measured(1, "plain-sock", first)}),
         dye_of("b", {measured(1, "plain-sock", second)}), dye_of("d", {measured(1, "plain-sock", first)})}};
    const Substitutes found = bench.find();
    CHECK(ids(found) == "a d b c ");
    CHECK(found.ranked[0].delta_e_2000 == Approx(2.0425).margin(0.00005));
    CHECK(found.ranked[3].delta_e_2000 == Approx(3.4412).margin(0.00005));
    CHECK(found.ranked[0].match == LotMatch::a_little);
    CHECK(found.ranked[0].is_measured);
}

TEST_CASE("several swatches count by their mean", "[facts]") {
    const Bench bench{{dye_of("w", {measured(1, "plain-sock", blue), measured(2, "plain-sock", blue)}),
                       dye_of("a", {measured(1, "plain-sock", first), measured(2, "plain-sock", third)})}};
    const Substitutes found = bench.find();
    REQUIRE(found.ranked.front().pairs.size() == 2);
    CHECK(found.ranked.front().delta_e_2000 == Approx((2.0425 + 3.4412) / 2).margin(0.00005));
    CHECK(bench.find({}, percent(2)).ranked.front().delta_e_2000 == Approx(3.4412).margin(0.00005));
}

TEST_CASE("a dye is said to lean to a side, and which hazard codes it has more or fewer", "[facts]") {
    Dye original = wanted();
    original.hazards = std::vector<Hazard>{{"H317"}, {"H319"}};
    Dye other = dye_of("a", {measured(1, "plain-sock", Lab{55, 14, -70})});
    other.hazards = std::vector<Hazard>{{"H334"}, {"H317"}};
    const Bench bench{{original, other}};
    const Substitutes found = bench.find();
    const Substitute& one = found.ranked.front();
    CHECK(one.leaning.lightness == 1);
    CHECK(one.leaning.strength == -1);
    CHECK(one.leaning.hue == Pole::red);
    CHECK(one.wanted_family == HueFamily::blue);
    CHECK(one.family == HueFamily::blue);
    const CodeDifference codes = hazard_difference(original, other);
    CHECK(codes.more == std::vector<std::string>{"H334"});
    CHECK(codes.fewer == std::vector<std::string>{"H319"});
}

TEST_CASE("swatches are compared on one base and at like depths only", "[facts]") {
    const Bench bench{{wanted(), dye_of("near", {measured(0.8, "plain-sock", third)}),
                       dye_of("far", {measured(0.79, "plain-sock", blue)}),
                       dye_of("deep", {measured(1.25, "plain-sock", second)}),
                       dye_of("elsewhere", {measured(1, "fell-dk", blue)}),
                       dye_of("bare", {measured(1, "plain-sock", std::nullopt)}), dye_of("none", {})}};
    const Substitutes found = bench.find();
    CHECK(ids(found) == "deep near ");
    REQUIRE(found.others.size() == 4);
    CHECK(found.others[0].lack == Lack::at_other_depths);
    CHECK(found.others[1].lack == Lack::on_other_bases);
    CHECK(found.others[2].lack == Lack::without_colour);
    CHECK(found.others[3].lack == Lack::never_swatched);
}

TEST_CASE("the nearest depth counts, and of two at one depth the last recorded", "[facts]") {
    const Bench bench{{wanted(), dye_of("a", {measured(1.2, "plain-sock", blue), measured(1, "plain-sock", second),
                                              measured(1, "plain-sock", third), measured(0.9, "plain-sock", blue)})}};
    CHECK(bench.find().ranked.front().delta_e_2000 == Approx(3.4412).margin(0.00005));
}

TEST_CASE("colours by eye and of fluorescent dyes are not told apart for sure", "[facts]") {
    Dye by_eye = dye_of("eye", {swatch(1, "plain-sock", first)});
    Dye bright = dye_of("bright", {measured(1, "plain-sock", first)});
    bright.fluorescent = true;
    const Substitutes found = Bench{{wanted(), by_eye, bright}}.find();
    for (const Substitute& one : found.ranked) {
        CHECK_FALSE(one.is_measured);
        CHECK(one.match == LotMatch::uncertain);
    }
}

TEST_CASE("what is unknown fulfils no wish, and is counted apart", "[facts]") {
    Dye good = dye_of("good", {measured(1, "plain-sock", first)});
    good.breaks_into = std::vector<Component>{};
    good.speckle = Speckle{SpeckleGrade::soft, {}, {}};
    good.in_stock = grams(40);
    good.dye_class = "acid, levelling";
    Dye breaking = good;
    breaking.id.value = "breaking";
    breaking.breaks_into = std::vector<Component>{{"rust", {}, {}}};
    Dye hazy = good;
    hazy.id.value = "hazy";
    hazy.speckle = Speckle{SpeckleGrade::hazy, {}, {}};
    Dye used_up = good;
    used_up.id.value = "used-up";
    used_up.in_stock = grams(0);
    Dye gone = good;
    gone.id.value = "gone";
    gone.status = DyeStatus::discontinued;
    const Dye unknown = dye_of("unknown", {measured(1, "plain-sock", first)});
    const Bench bench{{wanted(), good, breaking, hazy, used_up, gone, unknown}};

    CHECK(ids(bench.find()) == "good breaking hazy used-up gone unknown ");
    const auto left_out = [&](const Wishes& wishes) {
        std::string text = ids(bench.find(wishes));
        for (const LeftOut& one : bench.find(wishes).left_out)
            text += std::to_string(one.known) + "+" + std::to_string(one.unknown) + " ";
        return text;
    };
    CHECK(left_out({.holds_together = true}) == "good hazy used-up gone 1+1 ");
    CHECK(left_out({.speckles = SpeckleGrade::soft}) == "good breaking used-up gone 1+1 ");
    CHECK(left_out({.speckles = SpeckleGrade::clean}) == "5+1 ");
    CHECK(left_out({.in_stock = true}) == "good breaking hazy 2+1 ");
    CHECK(left_out({.dye_class = "Acid"}) == "good breaking hazy used-up gone 0+1 ");
    CHECK(left_out({.line = "fenlight ACID", .dye_class = "acid"}) == "good breaking hazy used-up gone 0+1 ");
    CHECK(left_out({.holds_together = true, .speckles = SpeckleGrade::soft, .in_stock = true}) == "good 1+1 1+0 2+0 ");
}

TEST_CASE("a dye is meant by its id, its code or its name", "[facts]") {
    Records records = studio_records();
    records.dyes = {plain_dye("sloe", "Sloe", "Fenlight acid", "F-412"),
                    plain_dye("f-412", "Alder", "Fenlight acid", "F-9"),
                    plain_dye("sloe-t", "SLOE", "Tarnbeck milling", "T24")};
    Diagnostics diagnostics;
    CHECK(find_dye(records, "f-412", diagnostics) == &records.dyes[1]); // an id goes before a code
    CHECK(find_dye(records, "F-412", diagnostics) == &records.dyes[0]);
    CHECK(find_dye(records, "t24", diagnostics) == &records.dyes[2]);
    CHECK(find_dye(records, "alder", diagnostics) == &records.dyes[1]);
    CHECK(diagnostics.errors() == 0);
    CHECK(find_dye(records, "Sloe", diagnostics) == nullptr);
    REQUIRE(diagnostics.errors() == 1);
}
