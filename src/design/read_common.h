// What every kind of box can have: sizes, margins, background, border, conditions.
#pragma once

#include "design/facts_here.h"
#include "source/fields.h"

#include <string>

namespace dyeleaf {

void read_common(Fields& fields, Box& box, const BoxContext& context);

// How a container places its boxes across its run. Texts use the same word for their lines.
void read_align(Fields& fields, Box& box, Diagnostics& diagnostics);

// `fit`, `fill`, `fill 2` or a length.
Extent read_extent(const Node& node, const std::string& what, Diagnostics& diagnostics);

} // namespace dyeleaf
