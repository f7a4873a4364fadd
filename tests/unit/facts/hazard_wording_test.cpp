#include "facts/hazard_wording.h"

#include "english.h"
#include "records/precaution_codes.h"

#include <catch2/catch.hpp>

using namespace dyeleaf;

namespace {

std::string said(const std::string& code, StatementWording wording) {
    return statement_words(english(), wording, Hazard{code});
}
std::string said(const Precaution& precaution) {
    return statement_words(english(), StatementWording::eu, precaution);
}

} // namespace

TEST_CASE("every code has its published text", "[facts]") {
    for (const HazardClass& one : hazard_classes()) {
        CHECK_NOTHROW(said(std::string{one.code}, StatementWording::un));
        CHECK_NOTHROW(said(std::string{one.code}, StatementWording::eu));
    }
    for (const std::string_view code : precaution_codes()) {
        INFO(code);
        CHECK(english().has("statements.precaution." + std::string{code}));
        const bool blank = said(Precaution{std::string{code}}).find("…") != std::string::npos;
        CHECK(is_precaution_with_blank(code) == blank);
    }
    for (const auto& [key, text] : english().phrases()) {
        if (!key.starts_with("statements.")) continue;
        INFO(key);
        const std::string code = key.substr(key.rfind('.') + 1);
        CHECK((is_precaution_code(code) || !classes_of(code).empty()));
        CHECK(text.find('<') == std::string::npos);
        CHECK((text.find("…") == std::string::npos || is_precaution_with_blank(code) || code == "EUH208"));
    }
}

TEST_CASE("hazards are worded as where the studio sells", "[facts]") {
    CHECK(statement_wording(Market::eu) == StatementWording::eu);
    CHECK(statement_wording(Market::uk) == StatementWording::eu);
    CHECK(statement_wording(Market::us) == StatementWording::un);
    CHECK(statement_wording(Market::none) == StatementWording::un);
    // UN GHS, annex 3; EU CLP, annex III.
    CHECK(said("H334", StatementWording::un) ==
          "May cause allergy or asthma symptoms or breathing difficulties if inhaled");
    CHECK(said("H334", StatementWording::eu) ==
          "May cause allergy or asthma symptoms or breathing difficulties if inhaled.");
    CHECK(said("H251", StatementWording::un) == "Self-heating; may catch fire");
    CHECK(said("H251", StatementWording::eu) == "Self-heating: may catch fire.");
    CHECK(said("H272", StatementWording::un) == "May intensify fire; oxidizer");
    CHECK(said("H272", StatementWording::eu) == "May intensify fire; oxidiser.");
    CHECK(said("H302+H332", StatementWording::eu) == "Harmful if swallowed or if inhaled.");
    CHECK(said("H360FD", StatementWording::eu) == "May damage fertility. May damage the unborn child.");
    // What only one of the two has.
    CHECK(said("H303", StatementWording::eu) == "May be harmful if swallowed");
    CHECK(said("EUH066", StatementWording::un) == "Repeated exposure may cause skin dryness or cracking.");
}

TEST_CASE("in a language for which the UN has no words, those of the EU stand", "[facts]") {
    Phrases phrases = english().phrases();
    phrases["statements.eu.H317"] = "Kann allergische Hautreaktionen verursachen.";
    const Language german{"de", "Deutsch", phrases};
    CHECK(statement_words(german, StatementWording::un, Hazard{"H317"}) ==
          "Kann allergische Hautreaktionen verursachen.");
}

TEST_CASE("a combination of precautions without a text of its own is the texts of its parts", "[facts]") {
    // EU CLP, annex IV.
    CHECK(said({"P361+P364"}) == "Take off immediately all contaminated clothing and wash it before reuse.");
    CHECK(said({"P305+P351+P338"}) == "IF IN EYES: Rinse cautiously with water for several minutes. Remove contact "
                                      "lenses, if present and easy to do. Continue rinsing.");
    CHECK(said({"P301+P330"}) == "IF SWALLOWED: Rinse mouth.");
    CHECK(said({"P264", "Wash hands thoroughly after handling."}) == "Wash hands thoroughly after handling.");
}

TEST_CASE("hazard words are the supplier's or say that there are none", "[facts]") {
    constexpr auto eu = StatementWording::eu;
    const auto none_listed = std::optional{std::vector<Hazard>{}};
    const auto listed = std::optional{std::vector<Hazard>{{"H319"}, {"EUH066"}, {"H315"}}};
    const auto not_on_file = std::optional<std::vector<Hazard>>{};

    const HazardSummary codes = summarise({{"Sloe", listed}, {"Ember", listed}});
    const std::string statements = "Causes skin irritation. Causes serious eye irritation. Repeated exposure may cause "
                                   "skin dryness or cracking.";
    CHECK(hazard_words(english(), eu, codes) == "Warning: " + statements);
    CHECK(hazard_words(english(), StatementWording::un, codes) == "Warning: " + statements);
    CHECK(unsigned_hazard_words(english(), eu, codes) == statements);
    CHECK(hazard_words_brief(english(), codes) == "Warning: H315 H319 EUH066");

    const HazardSummary none = summarise({{"Sloe", none_listed}, {"salt", not_on_file, {}, true}});
    CHECK(hazard_words(english(), eu, none) == "Supplier’s sheet lists no hazard codes");
    CHECK(hazard_words_brief(english(), none) == "no codes on sheet");

    const HazardSummary missing = summarise({{"Sloe", not_on_file}, {"salt", none_listed, {}, true}});
    CHECK(hazard_words(english(), eu, missing) == "Hazard data not on file: treat as harmful if breathed in");
    CHECK(hazard_words_brief(english(), missing) == "Hazard data not on file: treat as harmful");

    const HazardSummary partly = summarise({{"Sloe", listed}, {"Ember", not_on_file}});
    CHECK(hazard_words(english(), eu, partly) ==
          "Warning: " + statements + " Hazard data not on file for Ember: treat as harmful if breathed in.");
    CHECK(hazard_words_brief(english(), partly) == "Warning: H315 H319 EUH066, other data not on file");

    const HazardSummary half = summarise({{"Sloe", none_listed}, {"Ember", not_on_file}});
    CHECK(hazard_words(english(), eu, half) == "Hazard data not on file for Ember: treat as harmful if breathed in");

    // No signal word goes with this one.
    const HazardSummary unsigned_one = summarise({{"Sloe", std::optional{std::vector<Hazard>{{"H412"}}}}});
    CHECK(hazard_words(english(), eu, unsigned_one) == "Harmful to aquatic life with long lasting effects.");
    CHECK(hazard_words_brief(english(), unsigned_one) == "H412");
}
