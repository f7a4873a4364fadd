// What happens to a jar after it was filled: used up, weakened; and how to fill it evenly.
#pragma once

#include "base/quantity.h"
#include "records/records.h"

#include <optional>
#include <vector>

namespace dyeleaf {

// --- used up ---

// By the last weighing; nothing where it or the empty jar was not weighed, and where more went in afterwards.
std::optional<Mass> left_in(const Jar& jar);
Mass dye_in(Mass mix, Percent strength);
// Whole ones. Requires: more than nothing for each.
int skeins_from(Mass mix, Mass per_skein);

// --- weakened ---

// Salt that brings a mix from one strength to a lower one. Requires: a strength above nothing to bring it to.
Mass salt_to_weaken(Mass mix, Percent from, Percent to);

// --- filled ---

// Geometric dilution: `carrier` is stirred into `start` bit by bit, each as large as all that is there already, so that
// a little dye spreads evenly; bits are rounded to `step`, the last is what is left. Nothing where there is no start.
std::vector<Mass> doubling_steps(Mass start, Mass carrier, Mass step);

} // namespace dyeleaf
