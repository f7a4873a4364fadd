// Arranges labels on sheets. It sees sizes and display lists, never records.
#pragma once

#include "base/diagnostic.h"
#include "display/display_list.h"
#include "sheets/stock.h"
#include "sheets/trims.h"

#include <functional>
#include <set>
#include <string>
#include <vector>

namespace dyeleaf {

struct Slot {
    std::size_t label = 0;  // which of the labels
    Point origin;           // top left corner of its trim on the sheet, as it lies there
    int number = 1;         // of the place, row by row from 1: of the cell where there are cells
    Turn turn = Turn::none; // of the label, clockwise: where it fits a roll only on its side
};
struct SheetPlan {
    Size paper; // as it lies before the reader
    std::vector<Slot> slots;
};

// What a label's record is called, for complaints about some of them; none: nobody knows.
using NameOfLabel = std::function<std::string(std::size_t label)>;

struct ImposeOptions {
    std::vector<int> copies; // of each label, one after the other; empty: one of each
    std::set<int> used;      // cells of the first sheet that are used up, row by row from 1
    bool piles = false;      // each place takes consecutive labels down through the sheets
    NameOfLabel name = {};
};

// Where each label goes, in reading order. Plain card is filled in rows, the sheet upright or on its side, whichever
// takes more; room is kept for the test line. In piles, the sheets are cut as one pile, and the small piles laid on one
// another in reading order hold the labels in theirs. A label that is too large for the stock or its pouch or does not
// go into its cells whole, a used cell that is not there, a first sheet without a free cell, and piles or single cuts
// of different sizes are errors (`at` is where the stock was asked for).
std::vector<SheetPlan> plan_sheets(const Trims& labels, const Stock& stock, const ImposeOptions& options,
                                   const Spot& at, Diagnostics& diagnostics);

// `back` is for paper turned over like a page, left edge to right; `back_of_pad` for paper turned up like a sheet of a
// pad, bottom edge to top. Either way each label, cut out, turns over like a page.
enum class Side { front, back, back_of_pad };

// One side of a sheet: the labels clipped to trim and bleed, marks or lines beside plain card to cut along, the 100 mm
// test line and `caption` outside every trim. `lists[i]` belongs to `plan.slots[i]`. Backs have no cut marks: a back
// may land 2 mm off its front (common practice), and marks that close would stand on it; sheets are cut with their
// fronts up.
DisplayList compose_sheet(const SheetPlan& plan, const std::vector<std::shared_ptr<const DisplayList>>& lists,
                          const std::vector<Trim>& trims, const Stock& stock, Side side, const DisplayList& caption);

} // namespace dyeleaf
