// What can be asked of a base.
#pragma once

#include "facts/facts.h"

namespace dyeleaf {

// Of a `BaseView`.
const Vocabulary& base_vocabulary();

// How fibres are stated, wherever they are.
Derivation fibres_by_market();

} // namespace dyeleaf
