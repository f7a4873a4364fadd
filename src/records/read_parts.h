// What a mix is made of.
#pragma once

#include "records/records.h"
#include "source/document.h"
#include "source/values.h"

#include <optional>
#include <vector>

namespace dyeleaf {

// What may be weighed of a jar.
inline constexpr Range<Mass> jar_mass = {grams(0.001), grams(1'000'000)};

// The parts in the order written, all weighed or none; empty when any of them is refused. `own` is the jar's dye, which
// the part “dye” means; `own_was_written` tells a dye that was refused from one that was left out.
std::vector<Part> read_parts(const Node& node, const std::optional<Id>& own, bool own_was_written,
                             Diagnostics& diagnostics);

} // namespace dyeleaf
