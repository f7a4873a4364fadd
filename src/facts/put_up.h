// How tags state what a skein holds: a written figure as it stands, the rest worked out from it, never more than there
// is.
#pragma once

#include "base/length.h"
#include "base/quantity.h"
#include "language/language.h"
#include "records/records.h"

#include <optional>
#include <string>

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

// A written figure as it stands, tenths kept; one worked out rounded down as above, grams to 1.
std::string weight_statement(const Language& language, const SkeinSize& skein, UnitSystem system); // "100 g"
std::string length_statement(const Language& language, const SkeinSize& skein, UnitSystem system); // "420 m"
std::string put_up_statement(const Language& language, const SkeinSize& skein, UnitSystem system); // "100 g · 420 m"

} // namespace dyeleaf
