// Care symbols after ISO 3758, drawn by ourselves.
#pragma once

#include "symbols/named_drawing.h"

#include <vector>

namespace dyeleaf {

// One for every treatment that records may name, by its key: "wash 30 gentle".
std::vector<NamedDrawing> care_symbols();

} // namespace dyeleaf
