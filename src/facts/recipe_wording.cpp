#include "facts/recipe_wording.h"

#include "base/number.h"
#include "base/overloaded.h"
#include "facts/wording.h"

#include <cmath>

namespace dyeleaf {

namespace {

constexpr Volume litre = millilitres(1000);

} // namespace

std::string amount_words(const Language& language, const Amount& amount) {
    return std::visit(Overloaded{[&](Mass mass) { return mass_words(language, mass); },
                                 [&](Volume volume) { return volume_words(language, volume); }},
                      amount);
}

std::string bath_words(const Language& language, Volume bath) {
    if (bath < litre) return volume_words(language, millilitres(10 * std::round(bath.number() / 10)));
    return unbroken(language.number(bath / litre, 1) + " L");
}

std::string liquor_words(const Language& language, LiquorRatio ratio) {
    return unbroken("1 : " + language.number(ratio.water, 1));
}

std::string skeins_words(const Language& language, int count) {
    return unbroken(language.say(count == 1 ? "bench.one skein" : "bench.skeins", {{"count", std::to_string(count)}}));
}

std::string numbers_words(int first, int last) {
    return first == last ? std::to_string(first) : std::to_string(first) + "–" + std::to_string(last);
}

std::string source_words(const Language& language, const WorkedLine& worked) {
    if (const auto* jar = std::get_if<JarLine>(&worked.line->what)) {
        const std::string mass = mass_words(language, jar->per_skein);
        if (!worked.strength) return language.say("bench.shaken on", {{"mass", mass}});
        const std::string strength = strength_words(language, *worked.strength);
        return language.say("bench.shaken on of strength",
                            {{"mass", mass}, {"strength", worked.strength_estimated ? about(strength) : strength}});
    }
    const auto stock = [&](std::string_view key, Percent strength) {
        return language.say(key, {{"strength", percent_words(language, strength)},
                                  {"mass", mass_words(language, grams(strength.number()))}});
    };
    return std::visit(
        Overloaded{[&](Powder) { return language.say("bench.powder"); },
                   [&](WeightInVolume volume) { return stock("bench.stock by volume", volume.strength); },
                   [&](WeightInWeight weight) { return stock("bench.stock by weight", weight.strength); }},
        std::get<DyeLine>(worked.line->what).from);
}

// What she wrote is not rounded; what is shaken on is worked out.
std::string depth_words(const Language& language, const WorkedLine& line) {
    if (!line.depth) return {};
    if (line.dye != nullptr) return percent_words(language, *line.depth);
    const std::string depth = strength_words(language, *line.depth);
    return line.strength_estimated ? about(depth) : depth;
}

std::optional<std::string> result_words(const Language& language, const WorkedLine& line) {
    if (!line.depth || !line.result) return std::nullopt;
    const std::string result = strength_words(language, *line.result);
    if (result == strength_words(language, *line.depth)) return std::nullopt;
    return language.say("bench.as rounded", {{"depth", result}});
}

std::string share_words(const Language& language, const Assistant& assistant) {
    return std::visit(
        Overloaded{[&](Percent share) {
                       return language.say("bench.of dry weight", {{"share", percent_words(language, share)}});
                   },
                   [&](PerHundredGrams per) {
                       return language.say("bench.to 100 g", {{"volume", volume_words(language, per.volume)}});
                   }},
        assistant.amount);
}

} // namespace dyeleaf
