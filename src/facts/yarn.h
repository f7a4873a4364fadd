// Yarn as tags state it: weights and lengths from one recorded figure, never more than there is.
#pragma once

#include "base/length.h"
#include "base/quantity.h"
#include "language/language.h"
#include "records/records.h"

#include <optional>
#include <string>
#include <vector>

namespace dyeleaf {

// Rounded down: to 5, and to 1 below 50.
int stated_metres(Length length);
int stated_yards(Length length);
// Rounded down to a tenth.
double stated_ounces(Mass mass);

enum class UnitSystem { metric, imperial };
UnitSystem first_system(Units units);
// Nothing where tags state one system only.
std::optional<UnitSystem> second_system(Units units);

// The recorded figure as it was written, tenths kept; one worked out from it rounded down as above, grams to 1.
std::string weight_statement(const Language& language, const Base& base, UnitSystem system); // "100 g"
std::string length_statement(const Language& language, const Base& base, UnitSystem system); // "420 m"
std::string put_up_statement(const Language& language, const Base& base, UnitSystem system); // "100 g · 420 m"

// "75 % wool · 25 % polyamide", in the names and the order that the market's rules ask for.
std::string fibre_statement(const Language& language, const Base& base, Market market);
// Where it was spun and where it is dyed, each where it is recorded.
std::string provenance(const Language& language, const Base& base, const Studio& studio);
// In the order of ISO 3758.
std::vector<Care> in_process_order(std::vector<Care> care);

} // namespace dyeleaf
