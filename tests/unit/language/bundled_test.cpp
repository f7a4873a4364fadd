// The bundled languages beside English: read over it without a complaint, and a handful of what they print.
#include "facts/hazard_wording.h"
#include "facts/wording.h"
#include "facts/yarn_wording.h"

#include "english.h"
#include "project_folder.h"

#include <catch2/catch.hpp>

#include <filesystem>
#include <fstream>
#include <iterator>

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

std::string hazard(const Language& language, const std::string& code) {
    return statement_words(language, StatementWording::eu, Hazard{.code = code});
}

std::string precaution(const Language& language, const std::string& code) {
    return statement_words(language, StatementWording::eu, Precaution{.code = code});
}

} // namespace

TEST_CASE("statements come last in each language, and are cut off where none is recorded", "[language]") {
    std::size_t files = 0;
    for (const auto& entry : std::filesystem::directory_iterator{project_folder() / "layouts/languages"}) {
        INFO(entry.path());
        std::ifstream stream{entry.path(), std::ios::binary};
        const std::string text{std::istreambuf_iterator<char>{stream}, {}};
        const auto statements = text.find("\nstatements:\n");
        REQUIRE(statements != std::string::npos);
        for (std::size_t line = statements; line != std::string::npos; line = text.find('\n', line + 1)) {
            if (line == statements || line + 1 == text.size()) continue;
            CHECK((text[line + 1] == ' ' || text[line + 1] == '#' || text[line + 1] == '\n'));
        }
        ++files;
    }
    CHECK(files >= 3);
}

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

// Regulation (EC) No 1272/2008, Annexes I (signal words), III and IV, in its German wording.
TEST_CASE("German hazards are in the words of the law", "[language]") {
    const Language german = bundled("de");
    CHECK(signal_words(german, SignalWord::danger) == "Gefahr");
    CHECK(signal_words(german, SignalWord::warning) == "Achtung");
    CHECK(hazard(german, "H317") == "Kann allergische Hautreaktionen verursachen.");
    CHECK(hazard(german, "H319") == "Verursacht schwere Augenreizung.");
    CHECK(hazard(german, "H334") ==
          "Kann bei Einatmen Allergie, asthmaartige Symptome oder Atembeschwerden verursachen.");
    CHECK(hazard(german, "H335") == "Kann die Atemwege reizen.");
    CHECK(precaution(german, "P102") == "Darf nicht in die Hände von Kindern gelangen.");
    CHECK(precaution(german, "P305+P351+P338") ==
          "BEI KONTAKT MIT DEN AUGEN: Einige Minuten lang behutsam mit Wasser spülen. Eventuell vorhandene "
          "Kontaktlinsen nach Möglichkeit entfernen. Weiter spülen.");
    // No text in two lists to the letter: in English.
    CHECK(precaution(german, "P316") == precaution(english(), "P316"));
}

// The same, in its French wording.
TEST_CASE("French hazards are in the words of the law", "[language]") {
    const Language french = bundled("fr");
    CHECK(signal_words(french, SignalWord::danger) == "Danger");
    CHECK(signal_words(french, SignalWord::warning) == "Attention");
    CHECK(hazard(french, "H317") == "Peut provoquer une allergie cutanée.");
    CHECK(hazard(french, "H319") == "Provoque une sévère irritation des yeux.");
    CHECK(hazard(french, "H334") ==
          "Peut provoquer des symptômes allergiques ou d’asthme ou des difficultés respiratoires par inhalation.");
    CHECK(hazard(french, "H335") == "Peut irriter les voies respiratoires.");
    CHECK(precaution(french, "P102") == "Tenir hors de portée des enfants.");
    CHECK(precaution(french, "P316") == precaution(english(), "P316"));
}
