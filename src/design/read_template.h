// Text with holes: "mixed {jar.mixed.short}".
#pragma once

#include "design/facts_here.h"

namespace dyeleaf {

// Every hole must name a text fact that can be placed here. `{{` and `}}` print one brace.
Template read_template(const Node& node, const BoxContext& context);

} // namespace dyeleaf
