// Whether what is recorded of a yarn agrees with itself.
#pragma once

#include "base/diagnostic.h"
#include "records/records.h"

namespace dyeleaf {

// Warns where the length in 100 g is not what the dyer's word for the yarn usually means.
void check_yarn_weight(const Base& base, Diagnostics& diagnostics);

} // namespace dyeleaf
