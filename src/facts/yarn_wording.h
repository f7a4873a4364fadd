// How yarn prints: its fibres, its care, and measures such as needles, guidelines, counts and prices by weight.
#pragma once

#include "facts/fibre_statement.h"
#include "facts/yarn_weight_class.h"
#include "language/language.h"
#include "records/records.h"

#include <string>
#include <string_view>
#include <vector>

namespace dyeleaf {

std::string fibre_name_words(const Language& language, const StatedFibre& fibre); // "wool (merino)"
std::string fibre_words(const Language& language, const StatedFibre& fibre);      // "75 % wool (merino)"
// "75 % wool · 25 % polyamide", in the names and the order that the market's rules ask for.
std::string fibre_statement(const Language& language, const Base& base, Market market);
// Where it was spun and where it is dyed, each where it is recorded.
std::string provenance(const Language& language, const Base& base, const Studio& studio);

std::string care_words(const Language& language, const Care& care);              // "Wash 30 °C, gentle"
std::string care_words(const Language& language, const std::vector<Care>& care); // "Wash 30 °C, gentle · Do not bleach"
std::string words(const Language& language, PutUp put_up);                       // "mini skein"

// The needles that the dyer names, in the studio's units: "2.25–2.75 mm (US 1–2)". As she wrote them where they are no
// sizes, and where the other system has none.
std::string needles_words(const Language& language, std::string_view written, Units units);

// The guidelines of a class, and said to be such: "as a guide 27–32 stitches = 10 cm".
std::string usual_gauge_words(const Language& language, const YarnWeightClass& weight, Units units);
std::string usual_needles_words(const Language& language, const YarnWeightClass& weight, Units units);
std::string usual_hook_words(const Language& language, const YarnWeightClass& weight, Units units);

// A yarn count, to three significant figures, in the phrase of its system: yarn_count_words(language, "yarn.tex",
// 238.1).
std::string yarn_count_words(const Language& language, std::string_view system, double count);

// "420 m per 100 g".
std::string length_of_hundred_grams_words(const Language& language, const SkeinSize& skein);

// "€20.87 per 100 g".
std::string unit_price_words(const Language& language, const Price& price, Mass mass, const Currency& currency);

} // namespace dyeleaf
