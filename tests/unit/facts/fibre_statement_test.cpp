// Fibres as tags state them.
#include "english.h"
#include "facts/fibre_statement.h"
#include "facts/moisture.h"
#include "facts/wording.h"
#include "facts/yarn.h"
#include "studio_records.h"

#include <catch2/catch.hpp>

using namespace dyeleaf;

namespace {

using Fibres = std::vector<std::pair<std::string, double>>;

Base base_of(const Fibres& fibres) {
    Base base = full_base();
    base.fibres.clear();
    for (const auto& [name, share] : fibres)
        base.fibres.push_back({name, percent(share)});
    return base;
}

// With plain spaces.
std::string statement(const Base& base, Market market) {
    std::string text;
    for (const StatedFibre& fibre : stated_fibres(base, market)) {
        if (!text.empty()) text += ", ";
        std::string words = fibre_words(english(), fibre);
        words.replace(words.find("\u00a0"), 2, " ");
        text += words;
    }
    return text;
}

} // namespace

// Regulation (EU) No 1007/2011, Art. 9(1): in descending order.
TEST_CASE("fibres stand in descending order, equal ones as written, other fibres last", "[facts]") {
    const auto market = GENERATE(Market::eu, Market::us, Market::none);
    CHECK(statement(base_of({{"silk", 30}, {"wool", 40}, {"mohair", 30}}), market) ==
          "40 % wool, 30 % silk, 30 % mohair");
    CHECK(statement(base_of({{"silk", 2}, {"other fibers", 3}, {"wool", 95}}), Market::us) ==
          "95 % wool, 2 % silk, 3 % other fibers");
}

TEST_CASE("names follow the market, and without one stay as written", "[facts]") {
    const Base base = base_of({{"polyamide", 20}, {"merino wool", 75}, {"Spandex", 5}});
    CHECK(statement(base, Market::eu) == "75 % wool, 20 % polyamide, 5 % elastane");
    CHECK(statement(base, Market::uk) == "75 % wool, 20 % polyamide, 5 % elastane");
    CHECK(statement(base, Market::us) == "75 % wool, 20 % nylon, 5 % spandex");
    CHECK(statement(base, Market::none) == "75 % merino wool, 20 % polyamide, 5 % Spandex");
    CHECK(statement(base_of({{"wool", 95}, {"Sparkle", 5}}), Market::eu) == "95 % wool, 5 % Sparkle");
}

TEST_CASE("a breed stands behind its fibre only where the dyer asks for it", "[facts]") {
    Base base = base_of({{"merino", 75}, {"nylon", 25}});
    CHECK(statement(base, Market::eu) == "75 % wool, 25 % nylon");
    base.names_breed = true;
    CHECK(statement(base, Market::eu) == "75 % wool (merino), 25 % nylon");
    base.names_breed = false;
    CHECK(statement(base, Market::eu) == "75 % wool, 25 % nylon");
}

TEST_CASE("one fibre has one figure", "[facts]") {
    Base base = base_of({{"merino", 50}, {"silk", 20}, {"BFL", 30}});
    CHECK(statement(base, Market::eu) == "80 % wool, 20 % silk");
    base.names_breed = true;
    CHECK(statement(base, Market::eu) == "80 % wool (merino, Bluefaced Leicester), 20 % silk");
    base.fibres.push_back({"wool", percent(0)}); // of which breed?
    CHECK(statement(base, Market::eu) == "80 % wool, 20 % silk");
    CHECK(statement(base_of({{"polyamide", 20}, {"nylon", 5}, {"wool", 75}}), Market::us) == "75 % wool, 25 % nylon");
    // Two names of one row of Annex I; two materials of another.
    CHECK(statement(base_of({{"polyamide", 20}, {"nylon", 5}, {"wool", 75}}), Market::eu) ==
          "75 % wool, 25 % polyamide");
    CHECK(statement(base_of({{"viscose", 50}, {"rayon", 50}}), Market::us) == "100 % viscose");
    CHECK(statement(base_of({{"cattle hair", 50}, {"common goat hair", 50}}), Market::eu) ==
          "50 % cattle hair, 50 % common goat hair");
    CHECK(statement(base_of({{"recycled wool", 40}, {"wool", 60}}), Market::us) == "60 % wool, 40 % recycled wool");
}

// Art. 8(1) and 8(2) of the regulation.
TEST_CASE("virgin wool is named where nothing here speaks against it", "[facts]") {
    const auto [fibres, market, verdict] = GENERATE(table<Fibres, Market, VirginWool>({
        {{{"wool", 100}}, Market::eu, VirginWool::may_be_named},
        {{{"wool", 75}, {"silk", 25}}, Market::eu, VirginWool::may_be_named},
        {{{"wool", 25}, {"silk", 75}}, Market::eu, VirginWool::may_be_named},
        {{{"wool", 24}, {"silk", 76}}, Market::eu, VirginWool::too_little},
        {{{"wool", 60}, {"silk", 20}, {"nylon", 20}}, Market::eu, VirginWool::among_many},
        {{{"wool", 60}, {"nylon", 20}, {"polyamide", 20}}, Market::uk, VirginWool::may_be_named},
        {{{"wool", 60}, {"silk", 20}, {"nylon", 20}}, Market::us, VirginWool::may_be_named},
        {{{"alpaca", 100}}, Market::eu, VirginWool::no_wool},
        {{{"recycled wool", 100}}, Market::us, VirginWool::denied},
        {{{"virgin wool", 50}, {"wool", 50}}, Market::eu, VirginWool::may_be_named}, // as the base says of all of it
    }));
    Base base = base_of(fibres);
    base.virgin_wool = true;
    CHECK(virgin_wool(base, market) == verdict);
}

// Art. 8(2)(a): all the wool.
TEST_CASE("what is claimed of a part of the wool is not claimed of the rest", "[facts]") {
    const auto market = GENERATE(Market::eu, Market::us);
    CHECK(virgin_wool(base_of({{"wool", 100}}), market) == VirginWool::not_claimed);
    for (const char* rest : {"wool", "merino"}) {
        const Base base = base_of({{"virgin wool", 50}, {rest, 50}});
        CHECK(virgin_wool(base, market) == VirginWool::in_part);
        CHECK(statement(base, market) == "100 % wool");
    }
}

TEST_CASE("virgin wool prints as such, and its failed claim does not", "[facts]") {
    Base base = base_of({{"merino", 75}, {"silk", 25}});
    base.virgin_wool = true;
    CHECK(statement(base, Market::eu) == "75 % virgin wool, 25 % silk");
    base.names_breed = true;
    CHECK(statement(base, Market::eu) == "75 % virgin wool (merino), 25 % silk");
    base = base_of({{"virgin wool", 20}, {"silk", 80}});
    CHECK(statement(base, Market::eu) == "80 % silk, 20 % wool");
}

// Regulation (EU) No 1007/2011, Annex IX: wool 18.25 % combed, 17 % carded and where nobody can tell; polyamide 6.25 %,
// silk 11 %. The blend of 75 and 25 is also a spinning mill's worked example: 15.25 %.
TEST_CASE("the agreed allowance of a blend is the mean by share", "[facts]") {
    const auto [fibres, spinning, allowance] = GENERATE(table<Fibres, std::optional<Spinning>, std::optional<double>>({
        {{{"wool", 75}, {"polyamide", 25}}, Spinning::combed, 15.25},
        {{{"wool", 75}, {"polyamide", 25}}, Spinning::carded, 14.3125},
        {{{"wool", 75}, {"polyamide", 25}}, std::nullopt, 14.3125},
        {{{"merino wool", 100}}, Spinning::combed, 18.25},
        {{{"wool", 65}, {"silk", 35}}, std::nullopt, 14.9},
        {{{"cotton", 100}}, Spinning::combed, 8.5},
        {{{"horsehair", 100}}, Spinning::combed, 16},
        {{{"wool", 95}, {"sparkle", 5}}, std::nullopt, std::nullopt},
        {{{"wool", 95}, {"other fibres", 5}}, std::nullopt, std::nullopt},
    }));
    Base base = base_of(fibres);
    base.spinning = spinning;
    const auto found = agreed_allowance(base);
    REQUIRE(found.has_value() == allowance.has_value());
    if (found) CHECK(found->number() == Approx(*allowance));
}

// 100 g at 18.25 % hold 84.5666 g of dry wool (arithmetic).
TEST_CASE("the dry weight is what the allowance leaves", "[facts]") {
    CHECK(dry_mass(grams(100), percent(18.25)).number() == Approx(84.5666).epsilon(1e-5));
    CHECK(dry_mass(grams(100), percent(0)) == grams(100));
}

TEST_CASE("where yarn comes from is said as far as it is recorded", "[facts]") {
    Base base = full_base();
    Studio studio;
    CHECK(provenance(english(), base, studio) == "spun in Portugal");
    studio.made_in = "Ireland";
    CHECK(provenance(english(), base, studio) == "spun in Portugal\u00a0· dyed in Ireland");
    base.origin = std::nullopt;
    CHECK(provenance(english(), base, studio) == "dyed in Ireland");
    CHECK(provenance(english(), base, Studio{}).empty());
}
