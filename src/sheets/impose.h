// Arranges labels on sheets. It sees sizes and display lists, never records.
#pragma once

#include "base/diagnostic.h"
#include "display/display_list.h"
#include "sheets/stock.h"

#include <string>
#include <vector>

namespace dyeleaf {

// The outline along which a label is cut.
struct Trim {
    Size size;
    bool round = false; // an ellipse
    Length corner;      // radius
    Length bleed;       // how far artwork may run beyond the trim
    friend bool operator==(const Trim&, const Trim&) = default;
};

struct Slot {
    std::size_t label = 0; // which of the labels
    Point origin;          // top left corner of its trim on the sheet
};
struct SheetPlan {
    Size paper; // as it lies before the reader
    std::vector<Slot> slots;
};

struct ImposeOptions {
    int copies = 1; // of each label, one after the other
    int skip = 0;   // cells already used on the first sheet
};

// Where each label goes, in reading order. Plain card is filled in rows, the sheet upright or on its side, whichever
// takes more; room is kept for the test line. A label that is too large for the stock or its cells and a
// skip past the sheet's last cell are errors (`at` is where the stock was asked for).
std::vector<SheetPlan> plan_sheets(const std::vector<Trim>& labels, const Stock& stock, const ImposeOptions& options,
                                   const Spot& at, Diagnostics& diagnostics);

enum class Side { front, back };

// One side of a sheet: the labels clipped to trim and bleed, cut marks beside plain card, the 100 mm test line and
// `caption` outside every trim. `lists[i]` belongs to `plan.slots[i]`. The back is mirrored left to right, for paper
// turned over like a page.
DisplayList compose_sheet(const SheetPlan& plan, const std::vector<std::shared_ptr<const DisplayList>>& lists,
                          const std::vector<Trim>& trims, const Stock& stock, Side side, const DisplayList& caption);

} // namespace dyeleaf
