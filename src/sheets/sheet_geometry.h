// What planning a sheet and drawing it must agree on.
#pragma once

#include "sheets/impose.h"

#include <vector>

namespace dyeleaf {

// How far cut marks stand off the trim and how long they are, so that they stay on their own side of the gap.
struct CutMarks {
    Length offset, length;
    [[nodiscard]] constexpr Length reach() const { return offset + length; }
};
CutMarks cut_marks(const Stock& stock);
// The same on a page of its own, where they stand clear of the bleed.
CutMarks page_marks(const Trim& trim);

// How far a page of its own reaches beyond the label's trim: its bleed, and its marks where the stock wants them.
Length page_rim(const Stock& stock, const Trim& trim);

// Where labels may lie on plain card of this paper, as it lies before the reader: the test line has room below.
Rect card_room(Size paper, const Stock& stock);

// Where cut lines may run across it.
Rect lines_room(Size paper, const Stock& stock);

// The trim of a slot's label on the sheet.
Rect place_of(const Slot& slot, const Trim& trim);

// The label's bleed as far as the stock leaves room for it: half way to the next label.
Length bleed_on(const Stock& stock, const Trim& trim);

// The cells of a stock that has them, in reading order.
std::vector<Rect> cell_rects(const CellGrid& grid);

// What is printed or stuck on a sheet apart from the test line: every cell, or every label with its marks and bleed.
// `trims[i]` belongs to `plan.slots[i]`.
std::vector<Rect> occupied(const SheetPlan& plan, const std::vector<Trim>& trims, const Stock& stock);

// How a label lies on this side that lies like this on the front.
Turn seen_on(Side side, Turn turn);
// A place on the front of the paper as it is seen on this side of it.
Rect seen_on(Side side, Rect rect, Size paper);

} // namespace dyeleaf
