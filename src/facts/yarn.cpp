#include "facts/yarn.h"

#include "base/imperial.h"
#include "base/words.h"
#include "facts/rounding.h"
#include "facts/wording.h"

#include <algorithm>

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

std::string weight_statement(const SkeinSize& skein, UnitSystem system) {
    const Figure<Mass>& mass = skein.mass;
    if (system == UnitSystem::imperial) return ounces_words(stated_ounces(mass.imperial.value_or(mass.value)));
    if (mass.metric) return mass_words(grams(rounded_down(mass.metric->number(), tenth)));
    return mass_words(grams(rounded_down(mass.value.number(), 1)));
}

std::string length_statement(const SkeinSize& skein, UnitSystem system) {
    const Figure<Length>& length = skein.length;
    if (system == UnitSystem::metric) {
        return metres_words(length.metric ? rounded_down(length.metric->in_m(), tenth) : stated_metres(length.value));
    }
    return yards_words(length.imperial ? rounded_down(*length.imperial / yard, tenth) : stated_yards(length.value));
}

std::string put_up_statement(const SkeinSize& skein, UnitSystem system) {
    return joined({weight_statement(skein, system), length_statement(skein, system)}, dot);
}

// Regulation (EU) No 1007/2011, article 9(1): in descending order.
std::vector<Fibre> by_share(std::vector<Fibre> fibres) {
    std::ranges::stable_sort(fibres, std::ranges::greater{}, &Fibre::share);
    return fibres;
}

std::string fibre_statement(const Base& base) {
    std::vector<std::string> statements;
    for (const Fibre& fibre : by_share(base.fibres))
        statements.push_back(fibre_words(fibre));
    return joined(statements, dot);
}

std::vector<Care> in_process_order(std::vector<Care> care) {
    std::ranges::stable_sort(care, {}, &Care::process);
    return care;
}

} // namespace dyeleaf
