// How measures of yarn print: needles, guidelines, counts and prices by weight.
#pragma once

#include "facts/yarn_weight_class.h"
#include "language/language.h"
#include "records/records.h"

#include <string>
#include <string_view>

namespace dyeleaf {

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
