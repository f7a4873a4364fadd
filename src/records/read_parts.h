// The readers of each kind of record, for read_records.
#pragma once

#include "records/records.h"
#include "source/document.h"

namespace dyeleaf {

Studio read_studio(const Node& node, Diagnostics& diagnostics);
Ingredient read_ingredient(const Node& node, Diagnostics& diagnostics);
Dye read_dye(const Node& node, Diagnostics& diagnostics);
Jar read_jar(const Node& node, Diagnostics& diagnostics);
Base read_base(const Node& node, Diagnostics& diagnostics);
Lot read_lot(const Node& node, const Currency& currency, Diagnostics& diagnostics);

} // namespace dyeleaf
