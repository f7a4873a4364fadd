// The colours of a lot in the order in which they are laid on: first those of the bath, in the order of the recipe,
// then those that are shaken on, jar by jar, each dye of a jar by itself. What a recipe does not tell is not guessed.
#pragma once

#include "facts/facts.h"
#include "facts/yarn_view.h"

#include <optional>
#include <vector>

namespace dyeleaf {

struct PaletteColour {
    LotView of;
    const Dye* dye = nullptr;
    std::optional<Percent> depth; // as the recipe has it; none: shaken on
};

// Empty where the lot has no recipe.
std::vector<PaletteColour> palette_of(const LotView& lot);

// On the lot's own base the swatch of that depth; between two swatches the estimated shade; else the swatch nearest in
// depth, marked as an estimate as well; on no swatch of this base, the deepest of any, marked too. What is shaken on
// lies there in the dye's deepest colour.
Patch palette_patch(const Language& language, const PaletteColour& colour);

const Vocabulary& palette_vocabulary();

} // namespace dyeleaf
