#include "facts/yarn.h"

#include "base/words.h"
#include "facts/wording.h"

#include <algorithm>
#include <cmath>

namespace dyeleaf {

namespace {

// International yard and pound agreement, 1959: exact.
constexpr Length yard = metres(0.9144);
constexpr Mass ounce = grams(28.349523125);

// Undoes the binary error of figures such as 455 yd, which must not fall to the step below.
constexpr double nudge = 1e-9;

// A figure is stated no finer than this.
constexpr double tenth = 0.1;

double floor_to(double value, double step) {
    return std::floor(value / step + nudge) * step;
}

// Common practice: lengths that are worked out are rounded down, so that no skein is shorter than its tag.
int stated(double length) {
    return static_cast<int>(floor_to(length, length < 50 ? 1 : 5));
}

} // namespace

int stated_metres(Length length) {
    return stated(length.in_m());
}

int stated_yards(Length length) {
    return stated(length / yard);
}

double stated_ounces(Mass mass) {
    return floor_to(mass / ounce, tenth);
}

UnitSystem first_system(Units units) {
    return units == Units::imperial ? UnitSystem::imperial : UnitSystem::metric;
}

std::optional<UnitSystem> second_system(Units units) {
    if (units != Units::both) return std::nullopt;
    return UnitSystem::imperial;
}

std::string weight_statement(const Language& language, const Base& base, UnitSystem system) {
    if (system == UnitSystem::imperial) return ounces_words(language, stated_ounces(base.skein_mass));
    return mass_words(language, grams(floor_to(base.skein_mass.number(), base.mass_in_imperial ? 1 : tenth)));
}

std::string length_statement(const Language& language, const Base& base, UnitSystem system) {
    const bool converted = base.length_in_imperial != (system == UnitSystem::imperial);
    const Length length = base.skein_length;
    if (system == UnitSystem::metric) {
        return metres_words(language, converted ? stated_metres(length) : floor_to(length.in_m(), tenth));
    }
    return yards_words(language, converted ? stated_yards(length) : floor_to(length / yard, tenth));
}

std::string put_up_statement(const Language& language, const Base& base, UnitSystem system) {
    return joined({weight_statement(language, base, system), length_statement(language, base, system)}, dot);
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

std::vector<Care> in_process_order(std::vector<Care> care) {
    std::ranges::stable_sort(care, {}, &Care::process);
    return care;
}

} // namespace dyeleaf
