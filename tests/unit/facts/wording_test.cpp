#include "english.h"
#include "facts/wording.h"

#include "facts/dye_wording.h"
#include "facts/jar_wording.h"
#include "facts/names.h"
#include "facts/swatches.h"
#include "studio_records.h"

#include <catch2/catch.hpp>

using namespace dyeleaf;

TEST_CASE("dates print as far as they are known", "[facts]") {
    CHECK(short_date(english(), Date{2026, 11, 2}) == "2 Nov 2026");
    CHECK(short_date(english(), Date{2026, 11, 0}) == "Nov 2026");
    CHECK(short_date(english(), Date{2026, 0, 0}) == "2026");
    CHECK(long_date(english(), Date{2026, 11, 2}) == "2 November 2026");
    CHECK(long_date(english(), Date{2026, 5, 0}) == "May 2026");
    CHECK(month_date(english(), Date{2026, 11, 2}) == "Nov 2026");
    CHECK(month_date(english(), Date{2026, 0, 0}) == "2026");
    CHECK_FALSE(short_date(english(), std::optional<RecordedDate>{}));
    CHECK_FALSE(short_date(english(), std::optional<RecordedDate>{UnknownDate{}}));
}

TEST_CASE("numbers stay with their units", "[facts]") {
    CHECK(percent_words(english(), percent(0.5)) == "0.5\u00a0%");
    CHECK(percent_words(english(), percent(1.25)) == "1.25\u00a0%");
    CHECK(strength_words(english(), percent(33.3333)) == "33\u00a0%");
    CHECK(strength_words(english(), percent(99.4)) == "99\u00a0%");
    CHECK(strength_words(english(), percent(99.6)) == "99.6\u00a0%");
    CHECK(strength_words(english(), percent(99.97)) == "99.97\u00a0%");
    CHECK(strength_words(english(), percent(100)) == "100\u00a0%");
    CHECK(strength_words(english(), percent(9.0909)) == "9.1\u00a0%");
    CHECK(strength_words(english(), percent(0.9901)) == "0.99\u00a0%");
    CHECK(mass_words(english(), grams(20)) == "20\u00a0g");
    CHECK(mass_words(english(), grams(0.30000000000000004)) == "0.3\u00a0g");
    CHECK(about_if(true, mass_words(english(), grams(20))) == "≈\u00a020\u00a0g");
    CHECK(length_words(english(), mm(2.5)) == "2.5\u00a0mm");
    CHECK(parts_words(english(), 1) == "1\u00a0part");
    CHECK(parts_words(english(), 2.5) == "2.5\u00a0parts");
}

TEST_CASE("prices", "[facts]") {
    const Currency euro{"EUR", 2};
    CHECK(price_words(english(), {2600}, euro) == "€26.00");
    CHECK(price_words(english(), {5}, euro) == "€0.05");
    CHECK(price_words(english(), {125000}, euro) == "€1250.00");
    CHECK(price_words(english(), {1250000}, euro) == "€12\u00a0500.00");
    CHECK(price_words(english(), {123456789}, {"", 2}) == "1\u00a0234\u00a0567.89");
    CHECK(price_words(english(), {2600}, {"GBP", 2}) == "£26.00");
    CHECK(price_words(english(), {2600}, {"USD", 2}) == "$26.00");
    CHECK(price_words(english(), {2600}, {"JPY", 0}) == "¥2600");
    CHECK(price_words(english(), {26000}, {"SEK", 2}) == "260.00\u00a0SEK");
    CHECK(price_words(english(), {26500}, {"KWD", 3}) == "26.500\u00a0KWD");
}

TEST_CASE("small counts stand in words", "[facts]") {
    CHECK(count_words(english(), 1) == "one");
    CHECK(count_words(english(), 12) == "twelve");
    CHECK(count_words(english(), 13) == "13");
    CHECK(count_words(english(), 0) == "0");
}

TEST_CASE("unbroken text has no place to break", "[facts]") {
    CHECK(unbroken("Do not bleach") == "Do\u00a0not\u00a0bleach");
    CHECK(unbroken("Wash at 30\u00a0°C") == "Wash\u00a0at\u00a030\u00a0°C");
    CHECK(unbroken("").empty());
}

TEST_CASE("swatching dates say what is undated", "[facts]") {
    const auto dates = [](const std::vector<std::optional<RecordedDate>>& recorded) {
        Dye dye;
        for (const auto& date : recorded)
            dye.swatches.push_back(swatch(1, "plain-sock", std::nullopt, date));
        return swatching_dates(english(), swatches_in_order(dye)).value_or("(none)");
    };
    const Date year{2024, 0, 0};
    CHECK(dates({year}) == "2024");
    CHECK(dates({year, year}) == "2024");
    CHECK(dates({year, std::nullopt}) == "2024, one undated");
    CHECK(dates({UnknownDate{}, Date{2026, 3, 14}, std::nullopt, Date{2019, 0, 0}}) ==
          "2019 to 14 Mar 2026, two undated");
    // Unknown is something she wrote.
    CHECK(dates({UnknownDate{}, std::nullopt}) == "date unknown");
    CHECK(dates({std::nullopt}) == "(none)");
    CHECK(dates({}) == "(none)");
}

TEST_CASE("pots have letters", "[facts]") {
    CHECK(pot_words(english(), 0) == "Pot A");
    CHECK(pot_words(english(), 25) == "Pot Z");
    CHECK(pot_words(english(), 26) == "Pot AA");
}

TEST_CASE("unknown is not no", "[facts]") {
    Dye dye;
    CHECK(words(english(), breaks(dye)) == "Breaking: not tried");
    CHECK(breaking_words(english(), dye) == "breaking not tried");
    CHECK(speckle_words(english(), dye.speckle) == "Speckle: not tried");
    CHECK(warning_words(english(), dye).empty());
    dye.breaks_into = std::vector<Component>{};
    CHECK(words(english(), breaks(dye)) == "Does not break");
    dye.bleeds = dye.crocks = dye.fluorescent = false;
    dye.rinses_clear = true;
    CHECK(warning_words(english(), dye).empty());
    const Dye full = full_dye();
    CHECK(words(english(), breaks(full)) == "Breaks into");
    CHECK(breaking_words(english(), full) == "breaks into rust");
    CHECK(speckle_words(english(), full.speckle) == "Clean speckles, 2.5\u00a0mm, 4\u00a0per\u00a0cm²");
    Dye neon = full;
    neon.fluorescent = true;
    CHECK(warning_words(english(), neon) == warning_words(english(), full)); // that stands on its own
    CHECK(warning_words(english(), full) ==
          "Bleeds\u00a0· Rubs off\u00a0· Never rinses clear\u00a0· Light fastness: moderate");
}

TEST_CASE("dust is for no one to breathe", "[facts]") {
    CHECK(english().say("caution.dust") ==
          "Dye powder: keep from children. Do not breathe dust. Wear a fitted dust mask and gloves.");
}

TEST_CASE("salt is called what the dyer calls it", "[facts]") {
    Records records = studio_records();
    Jar jar = full_jar();
    CHECK(ratio_words(english(), mix_of(records, jar)) == "1\u00a0part Sloe : 1\u00a0part fine table salt, by weight");
    CHECK_FALSE(salt_words(english(), records, jar));
    jar.salt = std::nullopt;
    CHECK(ratio_words(english(), mix_of(records, jar)) == "1\u00a0part Sloe : 1\u00a0part salt, by weight");
    CHECK(salt_words(english(), records, jar) == "salt type not recorded");
    records.ingredients[0].name = "flake salt";
    CHECK(ratio_words(english(), mix_of(records, jar)) == "1\u00a0part Sloe : 1\u00a0part flake salt, by weight");
    CHECK_FALSE(salt_words(english(), records, jar));
    jar.parts.pop_back();
    CHECK_FALSE(salt_words(english(), records, jar));
}

TEST_CASE("a name that repeats says which it is", "[facts]") {
    Records records = studio_records();
    CHECK(distinct_name(records, records.dyes[0]) == "Sloe");
    CHECK_FALSE(namesake_words(english(), records, records.dyes[0]));
    records.dyes[1].name = "SLOE";
    CHECK(distinct_name(records, records.dyes[0]) == "Sloe (Fenlight acid)");
    CHECK(namesake_words(english(), records, records.dyes[0]) == "also in Tarnbeck milling");
    records.dyes[1].line = "Fenlight acid";
    CHECK(distinct_name(records, records.dyes[0]) == "Sloe (F-412)");
    CHECK(namesake_words(english(), records, records.dyes[0]) == "also in this line as T24");
}

TEST_CASE("a jar says how its dyes behave", "[facts]") {
    const Records records = studio_records();
    CHECK(behaviour_words(english(), records, records.jars[0]) == "Breaks into rust, bleeds");
    CHECK(behaviour_words(english(), records, records.jars[1]) ==
          "Ember: breaking not tried\u00a0· Sloe: breaks into rust, bleeds");
}
