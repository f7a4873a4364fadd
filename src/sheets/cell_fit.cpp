#include "sheets/cell_fit.h"

#include "base/words.h"

#include <cmath>

namespace dyeleaf {

namespace {

constexpr Length fit_play = mm(0.5);

Length hypotenuse(Length a, Length b) {
    return mm(std::hypot(a.in_mm(), b.in_mm()));
}

// "0.6 mm too wide and 2 mm too high".
std::string excess(Size label, Size cell) {
    const auto over = [](Length a, Length b, const std::string& how) {
        return fits(a, b + fit_play) ? std::string{} : to_string(a - b) + " too " + how;
    };
    const std::string wide = over(label.width, cell.width, "wide");
    const std::string high = over(label.height, cell.height, "high");
    return wide + (wide.empty() || high.empty() ? "" : " and ") + high;
}

// How far the corner of a rounded rectangle sticks out of another in whose middle it lies: from the centre of the outer
// corner's circle to the farthest point of the inner one's, less the outer radius. Both corners lie within the reach of
// the outer circle only where the inner circle's centre is beyond its centre both ways.
Length sticks_out(const Trim& label, const CellGrid& cell) {
    const auto beyond = [&](Length label_side, Length cell_side) {
        return (label_side / 2 - label.corner) - (cell_side / 2 - cell.corner);
    };
    const Length x = beyond(label.size.width, cell.cell.width);
    const Length y = beyond(label.size.height, cell.cell.height);
    if (x <= Length{} || y <= Length{}) return {};
    return hypotenuse(x, y) + label.corner - cell.corner;
}

std::string cell_words(const CellGrid& grid) {
    const std::string words = in_words({grid.cell, grid.round, {}, {}});
    return grid.corner > Length{} ? words + " with corners of " + to_string(grid.corner) : words;
}

std::string corner_words(Length corner) {
    return corner > Length{} ? " with corners of " + to_string(corner) : " with square corners";
}

} // namespace

std::optional<Refusal> refusal_by_cell(const Trim& label, const Stock& stock) {
    const CellGrid& grid = *stock.cells;
    const std::string cells =
        ", but the cells of the stock " + in_quotes(stock.name) + " are " + cell_words(grid) + ": ";
    const std::string other = "choose plain card or a stock with cells that hold it (`dyeleaf stocks` lists them), or "
                              "change the ";
    const std::string too_large = excess(label.size, grid.cell);
    if (!too_large.empty())
        return Refusal{"the label is " + in_words(label) + cells + "it is " + too_large, other + "size in the layout"};
    if (label.round && !grid.round) {
        return Refusal{"the label is " + in_words(label) + cells + "it would come off the sheet with corners",
                       other + "shape in the layout"};
    }
    if (!label.round && grid.round) {
        const Length across = hypotenuse(label.size.width, label.size.height);
        const bool is_circle = near(grid.cell.width, grid.cell.height);
        return Refusal{"the label is " + in_words(label) + cells +
                           (is_circle && !fits(across, grid.cell.width)
                                ? "its corners, " + to_string(across) + " apart, would be cut off"
                                : "it would come off the sheet without corners"),
                       other + "shape in the layout"};
    }
    const Length cut_off = label.round || label.sector ? Length{} : sticks_out(label, grid);
    if (fits(cut_off, fit_play / 2)) return std::nullopt;
    return Refusal{
        "the label is " + in_words(label) + corner_words(label.corner) + cells + to_string(cut_off) +
            " of each corner would be cut off",
        "write corner: " + to_string(grid.corner) +
            " under “shape” in the layout, or choose a stock with square cells (`dyeleaf stocks` lists them)"};
}

} // namespace dyeleaf
