// What can be asked of a lot, and of one skein of it.
#pragma once

#include "facts/facts.h"

namespace dyeleaf {

// Of a `LotView`.
const Vocabulary& lot_vocabulary();
// Of a `SkeinView`.
const Vocabulary& skein_vocabulary();

} // namespace dyeleaf
