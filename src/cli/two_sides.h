// How the paper is turned for its back, and what the dyer is told about it.
#pragma once

#include "base/geometry.h"
#include "records/records.h"
#include "sheets/impose.h"

#include <optional>
#include <string>

namespace dyeleaf {

struct Turning {
    Side back = Side::back;
    bool short_edge = false; // about which the paper turns
};

// Of a sheet that lies like this before the reader. Nothing chosen, or by hand: like a page, which keeps every back
// upright; that is the long edge of paper that stands, the short one of paper that lies. A printer that turns about the
// other edge gets its backs upside down, so that they come out right.
Turning turning(std::optional<Backs> backs, Size paper);

// All fronts before all backs.
bool is_by_hand(std::optional<Backs> backs);

// As it is recorded: "long edge".
std::string name_of(Backs backs);

// "flip on the long edge"; by hand: "print pages 1 to 3, turn the pile over on its long edge, print pages 4 to 6".
std::string turning_words(std::optional<Backs> backs, Size paper, std::size_t sheets);

} // namespace dyeleaf
