// The dyes that are in a jar, and that went into a lot.
#pragma once

#include "records/records.h"

#include <string>
#include <vector>

namespace dyeleaf {

// In stated order; a dye that is stated twice stands there twice.
std::vector<const Dye*> dyes_in(const Records& records, const Jar& jar);

// Each once: those that the lot names, those of its recipe, and those in its recipe's jars.
std::vector<const Dye*> dyes_in(const Records& records, const Lot& lot);

// The names of a jar's dyes, each once: "Sloe + Ember".
std::string dye_names(const Records& records, const Jar& jar);

// The jar's own name, else those of its dyes.
std::string jar_name(const Records& records, const Jar& jar);

} // namespace dyeleaf
