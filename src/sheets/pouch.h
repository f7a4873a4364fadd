// Cards in laminating pouches: they are cut out first and laid in, so that film seals the paper's edge all round.
#pragma once

#include "sheets/impose.h"

#include <string>
#include <vector>

namespace dyeleaf {

// Whether every card leaves its film all round in the pouch of the stock, which has one; else there are errors.
bool goes_into_pouch(const Trims& labels, const Stock& stock, const NameOfLabel& name, const Spot& at,
                     Diagnostics& diagnostics);

// The sheets of a stock whose cards share a pouch that lie otherwise than the cards of those before them.
std::vector<std::size_t> sheets_to_lay(const std::vector<SheetPlan>& plans, const Trims& labels);

// A sheet to lay under the open pouch: each card's outline where it was printed, `numbers[i]` in the middle of
// `plan.slots[i]`, dashed lines along which the film is trimmed, and the test line with its caption.
DisplayList compose_laying_sheet(const SheetPlan& plan, const std::vector<DisplayList>& numbers,
                                 const std::vector<Trim>& trims, const Stock& stock, const DisplayList& caption);

} // namespace dyeleaf
