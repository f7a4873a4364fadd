// How values print in a language: dates and numbers here, dyes, jars, yarn, hazards and recipes in files of their own.
// The words themselves stand in the language's file. A number and its unit never part at the end of a line.
#pragma once

#include "base/date.h"
#include "base/length.h"
#include "base/quantity.h"
#include "language/language.h"
#include "records/records.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace dyeleaf {

// Between things of one line; the no-break space keeps a new line from starting with it.
inline constexpr std::string_view dot = "\u00A0· ";

// Dates, as far as they are known.
std::string short_date(const Language& language, const Date& date); // "2 Nov 2026", "Nov 2026", "2026"
std::string long_date(const Language& language, const Date& date);  // "2 November 2026", "November 2026", "2026"
std::string month_date(const Language& language, const Date& date); // "Nov 2026", "2026"
// Nothing where none is recorded, and where it is recorded as unknown.
std::optional<Date> known_date(const std::optional<RecordedDate>& date);
std::optional<std::string> short_date(const Language& language, const std::optional<RecordedDate>& date);

// Numbers with their units.
std::string percent_words(const Language& language, Percent percent);     // as recorded: "0.5 %"
std::string strength_words(const Language& language, Percent strength);   // worked out: two significant figures, "33 %"
std::string allowance_words(const Language& language, Percent allowance); // to 0.01 %: "15.25 %"
std::string mass_words(const Language& language, Mass mass);              // "20 g"
std::string about_if(bool estimated, std::string words);                  // "≈ 20 g"
std::string volume_words(const Language& language, Volume volume); // whole mL, tenths below 10: "50 mL", "7.5 mL"
std::string length_words(const Language& language, Length length); // on paper and in speckles: "2.5 mm"
std::string ounces_words(const Language& language, double ounces); // "3.5 oz"
std::string metres_words(const Language& language, double metres); // "420 m"
std::string yards_words(const Language& language, double yards);   // "455 yd"
// "€26.00", "¥2600", "26.00 SEK"; no symbol where no currency is recorded.
std::string price_words(const Language& language, const Price& price, const Currency& currency);
std::string parts_words(const Language& language, double parts);          // "1 part", "2.5 parts"
std::string place_words(const Language& language, int number, int count); // "3 of 12"
std::string capitalised(std::string text);                                // a first letter of Latin-1
std::string pot_letters(int pot);                                         // from 0: "A" … "Z", "AA"
std::string pot_words(const Language& language, int pot);                 // from 0: "Pot A"
std::string count_words(const Language& language, int count);             // "one" to "twelve", then "13"
// Said only then.
std::optional<std::string> only_if(const Language& language, bool says_so, std::string_view key);
// Each once, in order: "Sloe + Ember".
std::string joined_once(const std::vector<std::string>& texts);
// With no-break spaces in place of spaces.
std::string unbroken(std::string_view text);

} // namespace dyeleaf
