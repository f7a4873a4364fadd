// The words for how a dye behaves.
#pragma once

#include "records/records.h"

#include <optional>
#include <string>
#include <string_view>

namespace dyeleaf {

inline constexpr std::string_view unswatched_words = "Not swatched yet";

// The three things that can be known of a dye.
enum class Breaks { not_tried, no, yes };
Breaks breaks(const Dye& dye);
std::string_view words(Breaks breaks);
std::string breaking_words(const Dye& dye); // "breaks into rust + teal", "does not break", "breaking not tried"
std::string_view words(SpeckleGrade grade); // "clean"
std::string speckle_words(const std::optional<Speckle>& speckle); // "Clean speckles, 2.5 mm"
std::optional<std::string_view> status_words(DyeStatus status);   // nothing while it is current
// What to beware of, each only where the record says so.
std::optional<std::string_view> fluorescent_words(const Dye& dye);
std::optional<std::string_view> bleeding_words(const Dye& dye);
std::optional<std::string_view> crocking_words(const Dye& dye);
std::optional<std::string_view> rinsing_words(const Dye& dye);
std::optional<std::string> light_fastness_words(const Dye& dye);
// All of these on one line; empty where there is nothing to beware of.
std::string warning_words(const Dye& dye);

// "use Sloe F-420".
std::string replacement_words(const Dye& replacement);
// "also in Tarnbeck milling", "also in this line as F-420"; nothing for a name that is its own.
std::optional<std::string> namesake_words(const Records& records, const Dye& dye);

} // namespace dyeleaf
