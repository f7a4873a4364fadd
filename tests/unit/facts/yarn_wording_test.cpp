// How measures of yarn print.
#include "facts/yarn_wording.h"

#include "base/words.h"
#include "english.h"
#include "facts/yarn_count.h"

#include <catch2/catch.hpp>

using namespace dyeleaf;

namespace {

// With plain spaces.
std::string plain(std::string text) {
    constexpr std::string_view space = "\u00a0";
    for (std::size_t at = text.find(space); at != std::string::npos; at = text.find(space, at))
        text.replace(at, space.size(), " ");
    return text;
}

YarnWeightClass weight(std::string_view words) {
    return find_yarn_weight_class(words).value();
}

} // namespace

// The sizes are those on which conversion charts agree.
TEST_CASE("needles print in the studio's units", "[facts]") {
    const auto [written, metric, both, imperial] = GENERATE(table<const char*, const char*, const char*, const char*>({
        {"2.5 mm", "2.5 mm", "2.5 mm (US 1.5)", "US 1.5 (2.5 mm)"},
        {"2.25-2.75 mm", "2.25–2.75 mm", "2.25–2.75 mm (US 1–2)", "US 1–2 (2.25–2.75 mm)"},
        {"US 6", "4 mm", "4 mm (US 6)", "US 6 (4 mm)"},
        {"15 mm", "15 mm", "15 mm (US 19)", "US 19 (15 mm)"},
        {"7 mm", "7 mm", "7 mm", "7 mm"},
        {"US 19", "US 19", "US 19", "US 19"},
        {"4 mm circular", "4 mm circular", "4 mm circular", "4 mm circular"},
    }));
    CHECK(plain(needles_words(english(), written, Units::metric)) == metric);
    CHECK(plain(needles_words(english(), written, Units::both)) == both);
    CHECK(plain(needles_words(english(), written, Units::imperial)) == imperial);
}

// Craft Yarn Council, Standard Yarn Weight System.
TEST_CASE("guidelines say that they are", "[facts]") {
    CHECK(usual_gauge_words(english(), weight("sock"), Units::both) == "as a guide 27–32 stitches = 10 cm");
    CHECK(usual_gauge_words(english(), weight("sock"), Units::imperial) == "as a guide 27–32 stitches = 4 in");
    CHECK(usual_gauge_words(english(), weight("jumbo"), Units::metric) == "as a guide 6 or fewer stitches = 10 cm");
    CHECK(plain(usual_needles_words(english(), weight("sock"), Units::both)) == "as a guide 2.25–3.25 mm (US 1–3)");
    CHECK(plain(usual_needles_words(english(), weight("aran"), Units::imperial)) == "as a guide US 7–9 (4.5–5.5 mm)");
    CHECK(plain(usual_needles_words(english(), weight("lace"), Units::both)) == "as a guide 1.5–2.25 mm (US 000–1)");
    CHECK(plain(usual_needles_words(english(), weight("jumbo"), Units::both)) ==
          "as a guide 12.75 mm or larger (US 17 or larger)");
    CHECK(plain(usual_hook_words(english(), weight("bulky"), Units::both)) == "as a guide 6.5–9 mm (US K-10½ to M-13)");
    CHECK(plain(usual_hook_words(english(), weight("lace"), Units::both)) == "as a guide 2.25 mm (US B-1)");
    CHECK(plain(usual_hook_words(english(), weight("DK"), Units::metric)) == "as a guide 4.5–5.5 mm");
}

// 420 m in 100 g: 238.095 tex, Nm 4.2, 2142.86 denier, Ne 2.48027, worsted count 3.72041.
TEST_CASE("counts print to three figures", "[facts]") {
    const YarnCounts counts = yarn_counts(grams(100), metres(420));
    CHECK(plain(yarn_count_words(english(), "yarn.tex", counts.tex)) == "238 tex");
    CHECK(plain(yarn_count_words(english(), "yarn.dtex", counts.dtex)) == "2380 dtex");
    CHECK(plain(yarn_count_words(english(), "yarn.denier", counts.denier)) == "2140 den");
    CHECK(plain(yarn_count_words(english(), "yarn.metric count", counts.metric)) == "Nm 4.2");
    CHECK(plain(yarn_count_words(english(), "yarn.worsted count", counts.worsted)) == "worsted count 3.72");
    CHECK(plain(yarn_count_words(english(), "yarn.cotton count", counts.cotton)) == "Ne 2.48");
}

TEST_CASE("lengths and prices by weight", "[facts]") {
    const auto skein = [](double mass, double length) {
        return SkeinSize{{grams(mass), grams(mass), {}}, {metres(length), metres(length), {}}};
    };
    CHECK(plain(length_of_hundred_grams_words(english(), skein(100, 366))) == "366 m per 100 g"); // as written
    CHECK(plain(length_of_hundred_grams_words(english(), skein(115, 425))) == "365 m per 100 g"); // 369.6
    CHECK(plain(unit_price_words(english(), {2400}, grams(115), {"EUR", 2})) == "€20.87 per 100 g");
    CHECK(plain(unit_price_words(english(), {600}, grams(20), {"EUR", 2})) == "€30.00 per 100 g");
}
