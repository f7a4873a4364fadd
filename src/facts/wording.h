// The English words and the formats in which values print: numbers, dates and yarn here, dyes and jars in
// dye_wording.h and jar_wording.h. Nothing else in the program puts words on a label, save what the layouts and the
// records say themselves. A number and its unit never part at the end of a line.
#pragma once

#include "base/date.h"
#include "base/length.h"
#include "base/quantity.h"
#include "facts/hue.h"
#include "records/records.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace dyeleaf {

// Between things that stand on one line.
// Between things of one line; the no-break space keeps a new line from starting with it.
inline constexpr std::string_view dot = "\u00A0· ";

// Dates, as far as they are known.
std::string short_date(const Date& date); // "2 Nov 2026", "Nov 2026", "2026"
std::string long_date(const Date& date);  // "2 November 2026", "November 2026", "2026"
std::string month_date(const Date& date); // "Nov 2026", "2026"
// Nothing where none is recorded, and where it is recorded as unknown.
std::optional<Date> known_date(const std::optional<RecordedDate>& date);
std::optional<std::string> short_date(const std::optional<RecordedDate>& date);

// Numbers with their units.
std::string percent_words(Percent percent);   // as recorded: "0.5 %"
std::string strength_words(Percent strength); // worked out: two significant figures, "33 %"
std::string mass_words(Mass mass);            // "20 g"
std::string about(std::string words);         // "≈ 20 g"
std::string volume_words(Volume volume);      // whole millilitres, tenths below 10: "50 mL", "7.5 mL"
std::string length_words(Length length);      // on paper and in speckles: "2.5 mm"
std::string ounces_words(double ounces);      // "3.5 oz"
std::string metres_words(double metres);      // "420 m"
std::string yards_words(double yards);        // "455 yd"
// "€26.00", "¥2600", "26.00 SEK"; no symbol where no currency is recorded.
std::string price_words(const Price& price, const Currency& currency);
std::string parts_words(double parts);          // "1 part", "2.5 parts"
std::string place_words(int number, int count); // "3 of 12"
std::string capitalised(std::string text);      // the first letter, where it is an ASCII one
std::string pot_words(int pot);                 // from 0: "Pot A"
std::string count_words(int count);             // "one" to "twelve", then "13"
std::string fibre_words(const Fibre& fibre);    // "75 % merino wool"
// With no-break spaces in place of spaces.
std::string unbroken(std::string_view text);
std::string care_words(const std::vector<Care>& care);    // "Wash at 30 °C, gentle · Do not bleach"
std::string label_words(const Swatch&, const Base& base); // "2 % on Plain Sock"

// Choices.
std::string_view words(HueFamily family);                     // "orange/brown"
std::string hue_range_words(HueFamily first, HueFamily last); // "Pink", "Pink to green"
std::string_view words(ColourSource source);                  // "by eye"
std::string_view words(Basis basis);                          // "by weight"
std::string_view words(PutUp put_up);                         // "mini skein"

// Notes that stand or fall as a whole.
inline constexpr std::string_view date_unknown_words = "date unknown";
inline constexpr std::string_view no_colour_words = "No colour recorded";
inline constexpr std::string_view price_box_words = "Price";
inline constexpr std::string_view alternate_words = "Skeins differ a little: alternate two as you knit";
inline constexpr std::string_view wash_apart_words = "May bleed at first wash: wash apart";

} // namespace dyeleaf
