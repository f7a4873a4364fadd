#include "facts/yarn_wording.h"

#include "base/number.h"
#include "base/words.h"
#include "facts/needles.h"
#include "facts/put_up.h"
#include "facts/rounding.h"
#include "facts/skein_size.h"
#include "facts/unit_price.h"
#include "facts/wording.h"

namespace dyeleaf {

namespace {

using Text = std::optional<std::string>;

bool has_dash(const std::string& text) {
    return text.find('-') != std::string::npos;
}

// "2.25–2.75", "2.5", "B-1 to E-4".
std::string closed_words(const Language& language, const std::string& least, const std::string& most) {
    if (least == most) return least;
    const auto* const phrase = has_dash(least) || has_dash(most) ? "yarn.range of names" : "yarn.range";
    return language.say(phrase, {{"least", least}, {"most", most}});
}

// Sizes in the unit of this phrase: "2.25–2.75 mm", "US 17 or larger".
Text sizes_words(const Language& language, std::string_view unit, const Text& least, const Text& most) {
    if (!least) return std::nullopt;
    const std::string size = most ? closed_words(language, *least, *most) : *least;
    const std::string words = unbroken(language.say(unit, {{"size", size}}));
    return most ? words : language.say("yarn.or larger", {{"size", words}});
}

Text in_mm(const Language& language, const Span<Length>& span) {
    const auto number = [&](const std::optional<Length>& length) -> Text {
        if (!length) return std::nullopt;
        return language.number(length->in_mm(), 2);
    };
    return sizes_words(language, "yarn.mm", number(span.least), number(span.most));
}

// Nothing where one of the needles has no US size.
Text in_us(const Language& language, const Span<Length>& span) {
    const auto size = [](const std::optional<Length>& length) -> Text {
        const auto us = length ? us_needle_size(*length) : std::nullopt;
        return us ? std::optional{std::string{*us}} : std::nullopt;
    };
    const Text least = size(span.least);
    const Text most = size(span.most);
    if (span.least.has_value() != least.has_value() || span.most.has_value() != most.has_value()) return std::nullopt;
    return sizes_words(language, "yarn.us", least, most);
}

// Millimetres and US sizes as the studio's units have it. Nobody works by a US size alone: charts differ.
std::string both(const Language& language, const std::string& metric, const Text& us, Units units) {
    if (!us || units == Units::metric) return metric;
    const bool us_first = units == Units::imperial;
    return language.say("yarn.both units", {{"first", us_first ? *us : metric}, {"second", us_first ? metric : *us}});
}

std::string as_a_guide(const Language& language, const std::string& words) {
    return language.say("yarn.as a guide", {{"guideline", words}});
}

Text plain(const std::optional<std::string_view>& text) {
    if (!text) return std::nullopt;
    return std::string{*text};
}

} // namespace

std::string fibre_name_words(const Language& language, const StatedFibre& fibre) {
    std::string name = fibre.virgin ? "virgin wool" : fibre.name;
    const std::string key = "fibres." + name;
    if (fibre.is_legal && language.has(key)) name = language.say(key);
    if (fibre.breeds.empty()) return name;
    return language.say("yarn.of breed", {{"fibre", name}, {"breeds", joined(fibre.breeds, ", ")}});
}

std::string fibre_words(const Language& language, const StatedFibre& fibre) {
    return percent_words(language, fibre.share) + " " + fibre_name_words(language, fibre);
}

std::string fibre_statement(const Language& language, const Base& base, Market market) {
    std::vector<std::string> statements;
    for (const StatedFibre& fibre : stated_fibres(base, market))
        statements.push_back(fibre_words(language, fibre));
    return joined(statements, dot);
}

std::string provenance(const Language& language, const Base& base, const Studio& studio) {
    std::vector<std::string> steps;
    if (base.origin) steps.push_back(*base.origin);
    if (studio.made_in) steps.push_back(language.say("yarn.dyed in", {{"place", *studio.made_in}}));
    return joined(steps, dot);
}

std::string care_words(const Language& language, const Care& care) {
    return language.say("care." + std::string{care.key});
}

std::string care_words(const Language& language, const std::vector<Care>& care) {
    std::vector<std::string> texts;
    texts.reserve(care.size());
    for (const Care& treatment : care)
        texts.push_back(unbroken(care_words(language, treatment))); // lines break only between treatments
    return joined(texts, dot);
}

std::string words(const Language& language, PutUp put_up) {
    switch (put_up) {
    case PutUp::skein: return language.say("yarn.skein");
    case PutUp::mini: return language.say("yarn.mini skein");
    case PutUp::cone: return language.say("yarn.cone");
    case PutUp::braid: return language.say("yarn.braid");
    }
    return {};
}

std::string needles_words(const Language& language, std::string_view written, Units units) {
    const auto sizes = parse_needles(written);
    if (!sizes) return std::string{written};
    return both(language, in_mm(language, *sizes).value_or(""), in_us(language, *sizes), units);
}

std::string usual_gauge_words(const Language& language, const YarnWeightClass& weight, Units units) {
    const auto& [least, most] = weight.stitches;
    const std::string last = std::to_string(most.value_or(0));
    const std::string stitches = least ? closed_words(language, std::to_string(*least), last)
                                       : language.say("yarn.or fewer", {{"number", last}});
    const auto* const key = units == Units::imperial ? "yarn.stitches in 4 in" : "yarn.stitches in 10 cm";
    return as_a_guide(language, language.say(key, {{"stitches", stitches}}));
}

std::string usual_needles_words(const Language& language, const YarnWeightClass& weight, Units units) {
    const auto metric = in_mm(language, weight.needles).value_or("");
    return as_a_guide(language, both(language, metric, in_us(language, weight.needles), units));
}

std::string usual_hook_words(const Language& language, const YarnWeightClass& weight, Units units) {
    const auto us = sizes_words(language, "yarn.us", plain(weight.us_hooks.least), plain(weight.us_hooks.most));
    return as_a_guide(language, both(language, in_mm(language, weight.hooks).value_or(""), us, units));
}

std::string yarn_count_words(const Language& language, std::string_view system, double count) {
    return unbroken(language.say(system, {{"count", language.number(significant(count, count_figures))}}));
}

std::string length_of_hundred_grams_words(const Language& language, const SkeinSize& skein) {
    const SkeinSize hundred = skein_of(skein, {grams(100), {}, {}});
    const std::string amount = length_statement(language, hundred, UnitSystem::metric);
    return unbroken(language.say("yarn.per 100 g", {{"amount", amount}}));
}

std::string unit_price_words(const Language& language, const Price& price, Mass mass, const Currency& currency) {
    const std::string amount = price_words(language, price_of_hundred_grams(price, mass), currency);
    return unbroken(language.say("yarn.per 100 g", {{"amount", amount}}));
}

} // namespace dyeleaf
