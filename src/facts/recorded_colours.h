// Every colour that the records hold, with whose it is.
#pragma once

#include "records/records.h"

#include <string>
#include <vector>

namespace dyeleaf {

struct ColourOfRecord {
    std::string whose; // "Sloe at 2 % on Plain Sock", "rust in Bracken", "lot 26-117, Hedge in October"
    RecordedColour colour;
    bool glows = false; // of a fluorescent dye
};

// Swatches and what dyes break into, dye by dye, then undyed bases, then lots; in the order of the records.
std::vector<ColourOfRecord> recorded_colours(const Records& records);

} // namespace dyeleaf
