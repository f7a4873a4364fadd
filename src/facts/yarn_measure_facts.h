// The facts of how thick a base is: gauge, needles, guidelines, counts.
#pragma once

#include "facts/facts.h"

#include <vector>

namespace dyeleaf {

// About a BaseView.
std::vector<FactRow> yarn_measure_rows();

} // namespace dyeleaf
