// What the dye bench asks of a jar: what is left in it, how far that goes, how to weaken it, how to mix it.
#pragma once

#include "facts/facts.h"

#include <vector>

namespace dyeleaf {

// Rows about a JarView.
std::vector<FactRow> jar_bench_rows();

} // namespace dyeleaf
