// What speaks for and against a dye in another one's place, in a few words for the terminal.
#pragma once

#include "facts/substitutes.h"
#include "language/language.h"
#include "records/records.h"

#include <string>

namespace dyeleaf {

// "violet too · lighter, redder · furthest off at 2 % on Plain Sock: 4.5"
std::string colour_reasons(const Records& records, const Language& english, const Dye& wanted, const Substitute& one);
// "does not break · clean speckles, 2 mm · bleeds · hazards: without H317 · 90 g in stock"
std::string other_reasons(const Language& english, const Dye& wanted, const Dye& dye);

} // namespace dyeleaf
