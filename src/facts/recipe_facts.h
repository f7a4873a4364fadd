// What the dye bench asks of a lot.
#pragma once

#include "facts/facts.h"

namespace dyeleaf {

// About a LotView, beside the lot's own facts.
const Vocabulary& recipe_vocabulary();

} // namespace dyeleaf
