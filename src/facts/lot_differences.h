// Lots of one colourway on one base: how much they differ, and what that means to whoever knits with two of them.
#pragma once

#include "facts/lot_groups.h"
#include "records/records.h"

#include <vector>

namespace dyeleaf {

enum class LotMatch {
    alike,     // nobody sees it
    a_little,  // buy what a project needs from one lot
    visible,   // alternate skeins where they meet
    too_much,  // another colourway by rights
    uncertain, // less than a photograph or an eye can tell for sure: compare the yarn itself
};

struct LotDifference {
    const Lot* earlier = nullptr; // as recorded
    const Lot* later = nullptr;
    double delta_e_2000 = 0;
    double delta_e_76 = 0;
    bool is_measured = false; // both colours come from an instrument
    LotMatch match = LotMatch::alike;
};

// The studio's limits say what is alike and what is not. Below “visibly”, only measured colours are told apart: two
// photographs of one skein differ as much (common practice).
LotMatch judge(double delta_e_2000, bool is_measured, const LotLimits& limits);

// Every two lots of one colourway and base that have a colour, in the order of the records.
std::vector<LotDifference> lot_differences(const Records& records);

// Those of one lot to lots recorded before it. `by_yarn` are all lots, as lots_by_yarn groups them.
std::vector<LotDifference> differences_to_earlier(const LotGroups& by_yarn, const Lot& lot, const LotLimits& limits);

// Whether its tag asks to alternate skeins: as recorded, else where it visibly differs from another lot by measure.
bool asks_to_alternate(const LotGroups& by_yarn, const Lot& lot, const LotLimits& limits);

} // namespace dyeleaf
