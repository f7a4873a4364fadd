// What the suppliers' safety data sheets say of the things in a jar, put together. Nothing is classified here: codes
// are those that the dyer copied.
#pragma once

#include "records/records.h"

#include <optional>
#include <string>
#include <vector>

namespace dyeleaf {

struct HazardSource {
    std::string name; // of a dye or an ingredient
    std::optional<std::vector<Hazard>> hazards;
    bool plain_salt = false; // salt for which the dyer has recorded nothing needs no data sheet
};

struct HazardSummary {
    std::vector<std::string> codes;       // of all together, each once: H codes, then EUH codes, by number
    std::vector<std::string> not_on_file; // the names of those for which there are no data
    bool any_on_file = false;
};

HazardSummary summarise(const std::vector<HazardSource>& sources);
HazardSummary hazards_of(const Dye& dye);
HazardSummary hazards_of(const Records& records, const Jar& jar);

// The id under which records know plain salt without having described it.
bool is_plain_salt(const Ingredient& ingredient);

} // namespace dyeleaf
