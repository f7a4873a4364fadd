// A lot's pots: each is a lot in little, with a letter of its own.
#pragma once

#include "records/records.h"

#include <vector>

namespace dyeleaf {

// As even as can be, the fuller pots first: 10 skeins in pots of 4 at most are 4, 3 and 3. One pot where all fit.
// Requires: at least one skein, and room for one.
std::vector<int> split_evenly(int skeins, int most);

// Skeins in each pot as recorded, or split evenly by how many a pot holds. Empty: one pot, no letters.
std::vector<int> pots_of(const Lot& lot);

} // namespace dyeleaf
