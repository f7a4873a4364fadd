// One box of a layout file, with all that it holds.
#pragma once

#include "design/facts_here.h"

namespace dyeleaf {

Box read_box(const Node& node, const BoxContext& context);

} // namespace dyeleaf
