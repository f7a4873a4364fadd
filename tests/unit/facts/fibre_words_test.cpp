// What a dyer writes for a fibre, and the name that the law has for it.
#include "facts/fibre_words.h"
#include "facts/trade_words.h"

#include <catch2/catch.hpp>

#include <set>

using namespace dyeleaf;

namespace {

std::string named(std::string_view written, Market market) {
    const FibreWord word = read_fibre_word(written);
    return word.kind == nullptr ? "?" : legal_name(word, market);
}

} // namespace

// Regulation (EU) No 1007/2011, Annex I: 48 rows, of which the second names twelve animals; row 49 of Regulation (EU)
// No 286/2012, row 50 of Regulation (EU) 2018/122. Beside them horsehair and two more
// animals of row 3, the paper of row 48, and the olefin of the US.
TEST_CASE("every name of the EU's list is known and means itself", "[facts]") {
    CHECK(fibre_kinds().size() == 50 + 11 + 3 + 1 + 1);
    std::set<std::string_view> names;
    for (const FibreKind& kind : fibre_kinds()) {
        if (kind.eu.empty()) continue;
        const std::string name{first_of(kind.eu)};
        CHECK(names.insert(first_of(kind.eu)).second);
        CHECK(named(name, Market::eu) == name);
        CHECK(named(name, Market::uk) == name);
    }
    CHECK(named("linen", Market::eu) == "linen"); // row 7: flax or linen
    CHECK(named("nylon", Market::eu) == "nylon"); // row 30: polyamide or nylon
    CHECK(named("metallic yarn", Market::eu) == "metallic yarn");
    CHECK(named("alpaca wool", Market::eu) == "alpaca");
    CHECK(named("Mohair hair", Market::eu) == "mohair");
}

// Pairs of names: Annex I and 16 CFR 303.7 (from memory).
TEST_CASE("each market has its own name for a fibre", "[facts]") {
    const auto [written, eu, us] = GENERATE(table<std::string, std::string, std::string>({
        {"elastane", "elastane", "elastane"}, // 16 CFR 303.7 has “elastane” beside spandex
        {"spandex", "elastane", "spandex"},
        {"viscose", "viscose", "viscose"}, // as it has “viscose” beside rayon
        {"rayon", "viscose", "rayon"},
        {"polyamide", "polyamide", "nylon"},
        {"nylon", "nylon", "nylon"},
        {"lyocell", "lyocell", "lyocell"},
        {"modal", "modal", "modal"},
        {"cupro", "cupro", "cupra"},
        {"polylactide", "polylactide", "PLA"},
        {"pla", "polylactide", "PLA"},
        {"polypropylene", "polypropylene", "olefin"},
        {"olefin", "", "olefin"},
        {"elastodiene", "elastodiene", "rubber"},
        {"metallised fibre", "metallised fibre", "metallic"},
        {"linen", "linen", "linen"},
        {"flax", "flax", "flax"},
        {"hemp", "true hemp", "hemp"},
        {"true hemp", "true hemp", "true hemp"},
        {"protein", "protein", "protein"},
        {"angora", "angora", "angora rabbit hair"}, // 16 CFR 303.6
        {"yak", "yak", "yak hair"},
        {"fur fiber", "animal hair", "fur fiber"},
        {"other fibres", "other fibres", "other fibers"},
        {"bamboo viscose", "viscose", "rayon"},
        {"polyacrylate", "polyacrylate", ""},
    }));
    CAPTURE(written);
    CHECK(named(written, Market::eu) == eu);
    CHECK(named(written, Market::us) == us);
}

TEST_CASE("breeds and sorts are told from their fibre", "[facts]") {
    const auto [written, name, breed] = GENERATE(table<std::string, std::string, std::string>({
        {"merino wool", "wool", "merino"},
        {"Merino", "wool", "merino"},
        {"MERINO-WOOL", "wool", "merino"},
        {"BFL", "wool", "Bluefaced Leicester"},
        {"bluefaced leicester wool", "wool", "Bluefaced Leicester"},
        {"Shetland wool", "wool", "Shetland"},
        {"wool (merino)", "wool", "merino"},
        {"wool (bfl)", "wool", "Bluefaced Leicester"},
        {"kid mohair", "mohair", "kid"},
        {"baby alpaca", "alpaca", "baby"},
        {"suri", "alpaca", "suri"},
        {"mulberry silk", "silk", "mulberry"},
        {"pima cotton", "cotton", "pima"},
        {"lambswool", "wool", ""},
        {"wool", "wool", ""},
        {"cotton fibre", "cotton", ""},
        {"vicuña", "vicuna", ""},
        {"camel hair", "camel", ""},
    }));
    CAPTURE(written);
    const FibreWord word = read_fibre_word(written);
    REQUIRE(word.kind != nullptr);
    CHECK(legal_name(word, Market::eu) == name);
    CHECK(word.breed == breed);
}

TEST_CASE("what is said besides stays apart from the fibre", "[facts]") {
    const FibreWord superwash = read_fibre_word("superwash merino wool");
    CHECK(superwash.name == "wool");
    CHECK(superwash.breed == "merino");
    CHECK(superwash.besides == "superwash");
    CHECK(read_fibre_word("SW merino").besides == "sw");
    CHECK(read_fibre_word("organic cotton").besides == "organic");
    CHECK(read_fibre_word("100% wool").sole);
    CHECK(read_fibre_word("pure new wool").sole);
    CHECK(read_fibre_word("pure new wool").virgin);
    CHECK(read_fibre_word("virgin wool").virgin);
    CHECK_FALSE(read_fibre_word("wool").virgin);
    CHECK(legal_name(read_fibre_word("recycled wool"), Market::us) == "recycled wool");
    CHECK(legal_name(read_fibre_word("recycled wool"), Market::eu) == "wool");
    CHECK(legal_name(read_fibre_word("recycled polyester"), Market::us) == "polyester");
}

TEST_CASE("no word is taken for a fibre that it only resembles", "[facts]") {
    const auto written = GENERATE(as<std::string>{}, "sparkle", "bamboo", "artificial silk", "vegan cashmere",
                                  "cotton wool", "kid", "baby", "silk wool", "glass wool", "", " ", "wool silk");
    CAPTURE(written);
    CHECK(read_fibre_word(written).kind == nullptr);
}

TEST_CASE("for a trade word there is something to write instead", "[facts]") {
    CHECK(in_place_of("bamboo", Market::eu) ==
          "yarn from bamboo is nearly always viscose: write “viscose” if the mill says so");
    CHECK(in_place_of("sparkle", Market::us) ==
          "write what its thread is made of, as the mill says: “polyester”, “nylon” or “metallic”");
    CHECK_FALSE(in_place_of("wool", Market::eu));
    CHECK_FALSE(in_place_of("olefin", Market::us));
}
