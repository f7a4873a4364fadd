// A stock drawn small: its paper, its cells or labels on it, and how they are cut apart.
#pragma once

#include "display/display_list.h"
#include "sheets/stock.h"

#include <vector>

namespace dyeleaf {

// What is shown on a stock that has no cells of its own.
constexpr Size sample_label = {mm(85), mm(55)};

struct StockFigure {
    DisplayList drawing;     // at the scale; lines are as thick as on any paper
    std::vector<Rect> cells; // ready-cut ones in reading order, on the drawing
};

StockFigure draw_stock(const Stock& stock, double scale);

} // namespace dyeleaf
