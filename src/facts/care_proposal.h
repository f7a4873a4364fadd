// The gentlest care that a yarn's fibres ask for. Proposed, never assumed: nothing of it is printed on a label.
#pragma once

#include "records/records.h"

#include <optional>
#include <string>
#include <vector>

namespace dyeleaf {

struct CareProposal {
    std::vector<Care> care; // in printing order; nothing on dry and wet cleaning, for which the mill must speak
    std::string because;    // of which fibre: "alpaca", "wool that is not superwash"
};

// Nothing where the yarn holds a fibre not known here.
std::optional<CareProposal> proposed_care(const Base& base);

// The wool of the yarn, in all; sheep's alone.
Percent wool_share(const Base& base);
// How much of the yarn is superwash wool: at most its wool. Nothing where it is not recorded.
std::optional<Percent> superwash_share(const Base& base);

// Whether `one` asks more of the yarn than `other`, which speaks of the same thing.
bool is_harsher(const Care& one, const Care& other);

} // namespace dyeleaf
