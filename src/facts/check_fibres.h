// What the market's rules for fibre names, as far as they are known here, have to say of a base.
#pragma once

#include "base/diagnostic.h"
#include "records/records.h"

namespace dyeleaf {

// Warnings only, each with its clause and what to write. Silence does not mean that a tag meets a law.
void check_fibres(const Base& base, Market market, Diagnostics& diagnostics);

} // namespace dyeleaf
