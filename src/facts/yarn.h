// What a yarn is made of and how it is cared for.
#pragma once

#include "language/language.h"
#include "records/records.h"

#include <string>
#include <vector>

namespace dyeleaf {

// Largest share first; equal ones as written.
std::vector<Fibre> by_share(std::vector<Fibre> fibres);
std::string fibre_statement(const Language& language, const Base& base); // "75 % merino wool · 25 % polyamide"
// In the order of ISO 3758.
std::vector<Care> in_process_order(std::vector<Care> care);

} // namespace dyeleaf
