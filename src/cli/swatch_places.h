// Where swatches stand, in a few words for the terminal.
#pragma once

#include "facts/substitutes.h"
#include "records/records.h"

#include <string>
#include <vector>

namespace dyeleaf {

// "0.5 %, 1 % on Plain Sock; 1 % on Fell DK"; those of one base that follow one another stand together.
std::string places(const Records& records, const std::vector<const Swatch*>& swatches);
// The same of what was found, and where its depth is another: "0.8 % for 1 % on Plain Sock".
std::string places(const Records& records, const std::vector<LikePair>& pairs);

} // namespace dyeleaf
