// How a recipe prints on the sheet of its lot.
#pragma once

#include "facts/recipe.h"
#include "language/language.h"

#include <optional>
#include <string>

namespace dyeleaf {

std::string amount_words(const Language& language, const Amount& amount);   // "2.4 g", "177 mL"
std::string bath_words(const Language& language, Volume bath);              // litres to a tenth: "35.4 L"; "450 mL"
std::string liquor_words(const Language& language, LiquorRatio ratio);      // "1 : 30"
std::string skeins_words(const Language& language, int count);              // "1 skein", "4 skeins"
std::string numbers_words(int first, int last);                             // "5–8"; "5" for one
std::string source_words(const Language& language, const WorkedLine& line); // "1 % stock: 1 g in 100 mL"
std::string depth_words(const Language& language, const WorkedLine& line);  // "1.5 %"; empty where it is unknown
// There only where rounding to what can be weighed changes the depth as it prints.
std::optional<std::string> result_words(const Language& language, const WorkedLine& line);
std::string share_words(const Language& language, const Assistant& assistant); // "3 % of dry weight"

} // namespace dyeleaf
