// The words for what is in a jar, .
#pragma once

#include "facts/mix.h"
#include "language/language.h"
#include "records/records.h"

#include <optional>
#include <string>

namespace dyeleaf {

// A mix. Strength is always by weight, whatever the basis.
// "50 %", "≈ 27 %"; nothing where it is unknown.
std::optional<std::string> strength_figure(const Language& language, const Mix& mix);
// "50 % dye by weight", "about 27 % dye by weight, measured by volume", "by volume: strength unknown".
std::string strength_words(const Language& language, const Mix& mix);
// "bulk density of Sphagnum, fine table salt": what is missing to know it; nothing where it is known.
std::optional<std::string> lacking_words(const Language& language, const Mix& mix);
// "1 part Sloe : 4 parts salt, by weight".
std::string ratio_words(const Language& language, const Mix& mix);
// "50 % dye = 20 g Sloe + 20 g salt"; ≈ where grams are estimated, parts where there are none.
std::string recipe_words(const Language& language, const Mix& mix);
std::string amount_words(const Language& language, const Mix& mix, const MixPart& part); // stated: "1 part", "4.2 g"
std::optional<std::string> share_words(const Language& language, const Mix& mix, const MixPart& part); // "≈ 27 %"
std::optional<std::string> mass_words(const Language& language, const Mix& mix, const MixPart& part);  // "≈ 20 g"
std::optional<std::string> total_words(const Language& language, const Mix& mix);

// A jar.
std::string mixed_words(const Language& language, const Jar& jar); // "mixed 2 Nov 2026", "mixing date unknown"
std::optional<std::string> topped_up_words(const Language& language, const Jar& jar); // last: "topped up Nov 2026"
// That nobody wrote down which salt it is; nothing for a jar without salt, and where its part bears the salt's name.
std::optional<std::string> salt_words(const Language& language, const Records& records, const Jar& jar);
// "does not break, bleeds" of each dye in it.
std::string behaviour_words(const Language& language, const Records& records, const Jar& jar);

} // namespace dyeleaf
