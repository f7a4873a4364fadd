// What the suppliers' safety data sheets say of the things in a jar, put together. Nothing is classified here: a mix
// has what any of its parts has, however little of that is in it.
#pragma once

#include "facts/hazard_precedence.h"
#include "records/records.h"

#include <optional>
#include <string>
#include <vector>

namespace dyeleaf {

struct HazardSource {
    std::string name; // of a dye or an ingredient
    std::optional<std::vector<Hazard>> hazards;
    std::vector<Precaution> precautions = {};
    bool plain_salt = false; // salt for which the dyer has recorded nothing needs no data sheet
};

struct HazardSummary {
    HazardLabel label; // of all together
    std::vector<Precaution> precautions;
    std::vector<std::string> not_on_file; // the names of those for which there are no data
    bool any_on_file = false;
};

HazardSummary summarise(const std::vector<HazardSource>& sources);
HazardSummary hazards_of(const Dye& dye);
HazardSummary hazards_of(const Ingredient& ingredient);
HazardSummary hazards_of(const Records& records, const Jar& jar);
HazardSummary hazards_of(const Records& records, const Lot& lot);

// The id under which records know plain salt without having described it.
bool is_plain_salt(const Ingredient& ingredient);

} // namespace dyeleaf
