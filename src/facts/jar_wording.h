// The words for what is in a jar, and its cautions.
#pragma once

#include "facts/hazards.h"
#include "facts/mix.h"
#include "records/records.h"

#include <optional>
#include <string>
#include <string_view>

namespace dyeleaf {

// Cautions. A brief form is for lids.
inline constexpr std::string_view not_food_words = "NOT FOOD";
inline constexpr std::string_view dust_words =
    "Dye powder: keep from children. Do not breathe dust. Wear a fitted dust mask and gloves.";
inline constexpr std::string_view dust_words_brief = "Wear a dust mask";
inline constexpr std::string_view airtight_words = "Keep airtight and dry. Shake it shut, never over steam.";
inline constexpr std::string_view airtight_words_brief = "Keep airtight";
std::string hazard_words(const HazardSummary& hazards);
std::string hazard_words_brief(const HazardSummary& hazards);

inline constexpr std::string_view class_unknown_words = "class not recorded";

// A mix. Strength is always by weight, whatever the basis.
inline constexpr std::string_view estimated_grams_words = "Grams are estimated";
// "50 %", "≈ 27 %"; nothing where it is unknown.
std::optional<std::string> strength_figure(const Mix& mix);
// "50 % dye by weight", "about 27 % dye by weight, measured by volume", "by volume: strength unknown".
std::string strength_words(const Mix& mix);
// "1 part Sloe : 4 parts salt, by weight".
std::string ratio_words(const Mix& mix);
// "50 % dye = 20 g Sloe + 20 g salt"; ≈ where grams are estimated, parts where there are none.
std::string recipe_words(const Mix& mix);
std::string amount_words(const MixPart& part);                               // as stated: "1 part", "4.2 g"
std::optional<std::string> share_words(const Mix& mix, const MixPart& part); // "50 %", "≈ 27 %"
std::optional<std::string> mass_words(const Mix& mix, const MixPart& part);  // "20 g", "≈ 20 g"
std::optional<std::string> total_words(const Mix& mix);

// A jar.
std::string mixed_words(const Jar& jar);                    // "mixed 2 Nov 2026", "mixing date unknown"
std::optional<std::string> topped_up_words(const Jar& jar); // the last time: "topped up Nov 2026"
// That nobody wrote down which salt it is; nothing for a jar without salt, and where its part bears the salt's name.
std::optional<std::string> salt_words(const Records& records, const Jar& jar);
// "does not break, bleeds" of each dye in it.
std::string behaviour_words(const Records& records, const Jar& jar);

} // namespace dyeleaf
