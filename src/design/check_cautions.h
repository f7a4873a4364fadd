// Cautions cannot be styled away: a jar layout without every one of them, printed whatever the record says, is an
// error.
#pragma once

#include "base/diagnostic.h"
#include "design/design.h"

namespace dyeleaf {

void check_cautions(const Design& design, Diagnostics& diagnostics);

} // namespace dyeleaf
