// What can be asked of a shaker jar, its cautions among it.
#pragma once

#include "facts/facts.h"

namespace dyeleaf {

// Of a `JarView`.
const Vocabulary& jar_vocabulary();

} // namespace dyeleaf
