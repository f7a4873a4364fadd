// A dye's record as a picture of its speckles, and the words beside it.
#pragma once

#include "facts/speckled.h"
#include "language/language.h"
#include "records/records.h"

#include <optional>
#include <string>

namespace dyeleaf {

// On the base of the deepest swatch, whose colour the specks have. Nothing where nobody has tried, or the spread is not
// recorded: without it there is no true size.
std::optional<Speckled> speckled_dye(const Language& language, const Records& records, const Dye& dye);

// Below the picture: what it shows the speckles on, and what of it is assumed or left out: "True size on Plain Sock ·
// number of specks assumed". Nothing where there is no picture.
std::optional<std::string> speckled_note(const Language& language, const Records& records, const Dye& dye);

// What a picture has where no density is recorded: a speck to each square 1.7 spreads wide, which leaves most of the
// yarn bare; fewer where halos would cover more than half of it (common practice).
ArealDensity assumed_density(Length spread, Length widest_halo);

// "4 per cm²"
std::string density_words(const Language& language, ArealDensity density);

} // namespace dyeleaf
