// The words for a dye: how it behaves, what colour it is, where it is to be found.
#pragma once

#include "colour/hue.h"
#include "language/language.h"
#include "records/records.h"

#include <optional>
#include <string>

namespace dyeleaf {

// The three things that can be known of a dye.
enum class Breaks { not_tried, no, yes };
Breaks breaks(const Dye& dye);
std::string words(const Language& language, Breaks breaks);
// "breaks into rust + teal", "does not break", "breaking not tried".
std::string breaking_words(const Language& language, const Dye& dye);
std::string words(const Language& language, SpeckleGrade grade);                            // "clean"
std::string speckle_words(const Language& language, const std::optional<Speckle>& speckle); // "Clean speckles, 2.5 mm"
std::optional<std::string> status_words(const Language& language, DyeStatus status); // nothing while it is current
// "in stock", "none in stock", "40 g in stock"; nothing where it is not recorded.
std::optional<std::string> in_stock_words(const Language& language, const Dye& dye);
// What to beware of, each only where the record says so.
std::optional<std::string> fluorescent_words(const Language& language, const Dye& dye);
std::optional<std::string> bleeding_words(const Language& language, const Dye& dye);
std::optional<std::string> crocking_words(const Language& language, const Dye& dye);
std::optional<std::string> rinsing_words(const Language& language, const Dye& dye);
std::optional<std::string> light_fastness_words(const Language& language, const Dye& dye);
// All of these on one line; empty where there is nothing to beware of.
std::string warning_words(const Language& language, const Dye& dye);

std::string label_words(const Language& language, const Swatch& swatch, const Base& base); // "2 % on Plain Sock"
std::string words(const Language& language, ColourSource source);                          // "by eye"
std::string words(const Language& language, HueFamily family);                             // "orange/brown"
std::string hue_range_words(const Language& language, HueFamily first, HueFamily last);    // "Pink", "Pink to green"

// The jars it is mixed in, and how strong: "SL 50 %, HR 33 %"; nothing where there are none.
std::optional<std::string> jars_words(const Language& language, const Records& records, const Dye& dye);
// Where it is to be found and what it comes from: "jar SL 50 % · batch 77120 · opened 28 Feb 2026"; as far as recorded.
std::optional<std::string> supply_words(const Language& language, const Records& records, const Dye& dye);

// "Use Sloe (F-420)".
std::string replacement_words(const Language& language, const Dye& replacement);
// "also in Tarnbeck milling", "also in this line as F-420"; nothing for a name that is its own.
std::optional<std::string> namesake_words(const Language& language, const Records& records, const Dye& dye);

} // namespace dyeleaf
