#include "sheets/sheet_geometry.h"

#include "sheets/roll.h"

namespace dyeleaf {

namespace {

// Kept free along the bottom of plain card for the test line and the caption under it.
constexpr Length test_strip = mm(9);

} // namespace

CutMarks cut_marks(const Stock& stock) {
    // What runs on outside all labels must be seen beyond their bleed.
    if (stock.cut != Cut::corner_marks) return {mm(1), mm(5)};
    // Labels that almost touch are cut from the outside in: their marks stand around the block, at full length.
    constexpr Length too_narrow = mm(2);
    if (stock.gap < too_narrow) return {mm(1), mm(3)};
    constexpr Length offset = mm(0.5);
    return {offset, smaller(mm(3), stock.gap / 2 - offset)};
}

CutMarks page_marks(const Trim& trim) {
    return {trim.bleed + mm(1), mm(5)};
}

Length page_rim(const Stock& stock, const Trim& trim) {
    return stock.page_marks ? page_marks(trim).reach() + mm(1) : trim.bleed;
}

Rect lines_room(Size paper, const Stock& stock) {
    const Rect printable = shrunk({{}, paper}, Insets::all(stock.margin));
    return shrunk(printable, {{}, {}, test_strip, {}});
}

Rect card_room(Size paper, const Stock& stock) {
    const Rect room = lines_room(paper, stock);
    // What is drawn outside all labels must not fall into the margin.
    return stock.cut == Cut::corner_marks ? room : shrunk(room, Insets::all(cut_marks(stock).reach()));
}

Rect place_of(const Slot& slot, const Trim& trim) {
    return {slot.origin, turned_size(slot.turn, trim.size)};
}

Length bleed_on(const Stock& stock, const Trim& trim) {
    if (stock.roll) return bleed_on_roll(stock, trim);
    if (stock.page_per_label) return trim.bleed;
    Length between = stock.gap;
    if (const auto& cells = stock.cells) {
        const bool one_column = cells->columns == 1;
        const bool one_row = cells->rows == 1;
        const Length beside = cells->across - cells->cell.width;
        const Length below = cells->down - cells->cell.height;
        between = one_column ? below : one_row ? beside : smaller(beside, below);
        if (one_column && one_row) return trim.bleed;
    }
    return smaller(trim.bleed, larger(between, Length{}) / 2);
}

std::vector<Rect> cell_rects(const CellGrid& grid) {
    std::vector<Rect> cells;
    for (int row = 0; row < grid.rows; ++row) {
        for (int column = 0; column < grid.columns; ++column)
            cells.push_back({grid.first + Point{grid.across * column, grid.down * row}, grid.cell});
    }
    return cells;
}

std::vector<Rect> occupied(const SheetPlan& plan, const std::vector<Trim>& trims, const Stock& stock) {
    if (stock.cells) return cell_rects(*stock.cells);
    std::vector<Rect> places;
    for (std::size_t i = 0; i < plan.slots.size(); ++i) {
        const Length around = larger(cut_marks(stock).reach(), bleed_on(stock, trims[i]));
        places.push_back(grown(place_of(plan.slots[i], trims[i]), around));
    }
    return places;
}

Turn seen_on(Side side, Turn turn) {
    switch (side) {
    case Side::back: return turn == Turn::right ? Turn::left : turn == Turn::left ? Turn::right : turn;
    case Side::back_of_pad: return turn == Turn::none ? Turn::half : turn == Turn::half ? Turn::none : turn;
    case Side::front: break;
    }
    return turn;
}

Rect seen_on(Side side, Rect rect, Size paper) {
    switch (side) {
    case Side::back: return {{paper.width - rect.right(), rect.top()}, rect.size};
    case Side::back_of_pad: return {{rect.left(), paper.height - rect.bottom()}, rect.size};
    case Side::front: break;
    }
    return rect;
}

} // namespace dyeleaf
