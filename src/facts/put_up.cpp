#include "facts/put_up.h"

#include "base/imperial.h"
#include "base/words.h"
#include "facts/rounding.h"
#include "facts/wording.h"

namespace dyeleaf {

namespace {

// A figure is stated no finer than this.
constexpr double tenth = 0.1;

} // namespace

int stated_metres(Length length) {
    return rounded_length(length.in_m());
}

int stated_yards(Length length) {
    return rounded_length(length / yard);
}

double stated_ounces(Mass mass) {
    return rounded_down(mass / ounce, tenth);
}

UnitSystem first_system(Units units) {
    return units == Units::imperial ? UnitSystem::imperial : UnitSystem::metric;
}

std::optional<UnitSystem> second_system(Units units) {
    if (units != Units::both) return std::nullopt;
    return UnitSystem::imperial;
}

std::string weight_statement(const Language& language, const SkeinSize& skein, UnitSystem system) {
    const auto& [mass, metric, imperial] = skein.mass;
    if (system == UnitSystem::imperial) return ounces_words(language, stated_ounces(imperial.value_or(mass)));
    return mass_words(language, grams(metric ? rounded_down(metric->number(), tenth) : rounded_down(mass.number(), 1)));
}

std::string length_statement(const Language& language, const SkeinSize& skein, UnitSystem system) {
    const auto& [length, metric, imperial] = skein.length;
    if (system == UnitSystem::metric)
        return metres_words(language, metric ? rounded_down(metric->in_m(), tenth) : stated_metres(length));
    return yards_words(language, imperial ? rounded_down(*imperial / yard, tenth) : stated_yards(length));
}

std::string put_up_statement(const Language& language, const SkeinSize& skein, UnitSystem system) {
    return joined({weight_statement(language, skein, system), length_statement(language, skein, system)}, dot);
}

} // namespace dyeleaf
