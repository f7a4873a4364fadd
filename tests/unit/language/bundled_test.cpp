// The bundled languages beside English: read over it without a complaint, and a handful of what they print.
#include "facts/wording.h"

#include "english.h"

#include <catch2/catch.hpp>

using namespace dyeleaf;

namespace {

Language bundled(const std::string& code) {
    Diagnostics diagnostics;
    const auto language = bundled_language(code, &english(), diagnostics);
    for (const Diagnostic& one : diagnostics.sorted())
        FAIL_CHECK(code << ".yaml:" << one.spot.line << ": " << one.message << " / " << one.help);
    REQUIRE(language);
    return *language;
}

std::string care(const Language& language, std::string_view key) {
    return care_words(language, find_care(key).value());
}

} // namespace

TEST_CASE("German prints as German is set", "[language]") {
    const Language german = bundled("de");
    CHECK(german.name() == "Deutsch");
    CHECK(short_date(german, Date{2026, 11, 2}) == "2. Nov. 2026");
    CHECK(short_date(german, Date{2026, 11, 1}) == "1. Nov. 2026");
    CHECK(short_date(german, Date{2026, 5, 0}) == "Mai 2026");
    CHECK(long_date(german, Date{2026, 3, 14}) == "14. März 2026");
    CHECK(length_words(german, mm(2.5)) == "2,5\u00A0mm");
    CHECK(parts_words(german, 2.5) == "2,5\u00A0Teile");
    CHECK(price_words(german, {2600}, {"EUR", 2}) == "26,00\u00A0€");
    CHECK(price_words(german, {26000}, {"SEK", 2}) == "260,00\u00A0SEK");
    CHECK(place_words(german, 3, 12) == "3 von 12");
    CHECK(care(german, "wash 30 gentle") == "Waschen 30 °C, schonend");
    CHECK(care(german, "no tumble") == "Nicht in den Trockner");
}

TEST_CASE("French prints as French is set", "[language]") {
    const Language french = bundled("fr");
    CHECK(french.name() == "français");
    CHECK(short_date(french, Date{2026, 11, 2}) == "2 nov. 2026");
    CHECK(short_date(french, Date{2026, 11, 1}) == "1er nov. 2026");
    CHECK(short_date(french, Date{2026, 8, 0}) == "août 2026");
    CHECK(long_date(french, Date{2026, 2, 14}) == "14 février 2026");
    CHECK(length_words(french, mm(2.5)) == "2,5\u00A0mm");
    CHECK(price_words(french, {2600}, {"EUR", 2}) == "26,00\u00A0€");
    CHECK(place_words(french, 3, 12) == "3/12");
    CHECK(care(french, "wash 30 gentle") == "Lavage à 30 °C, modéré");
    CHECK(care(french, "hand wash") == "Lavage à la main");
    CHECK(french.say("jar.mixed", {{"date", "2 nov. 2026"}}) == "mélange\u00A0: 2 nov. 2026");
}
