// What a yarn is made of and how it is cared for.
#pragma once

#include "language/language.h"
#include "records/records.h"

#include <string>
#include <vector>

namespace dyeleaf {

// "75 % wool · 25 % polyamide", in the names and the order that the market's rules ask for.
std::string fibre_statement(const Language& language, const Base& base, Market market);
// Where it was spun and where it is dyed, each where it is recorded.
std::string provenance(const Language& language, const Base& base, const Studio& studio);
// In the order of ISO 3758.
std::vector<Care> in_process_order(std::vector<Care> care);

} // namespace dyeleaf
