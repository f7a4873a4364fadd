// What can be asked of a dye.
#pragma once

#include "facts/dye_view.h"
#include "facts/facts.h"

namespace dyeleaf {

// Of a `DyeView`.
const Vocabulary& dye_vocabulary();

} // namespace dyeleaf
