// Every stock on paper, drawn to one scale with its measures.
#pragma once

#include "display/display_list.h"
#include "language/language.h"
#include "sheets/stock.h"
#include "text/typesetter.h"

#include <string>
#include <vector>

namespace dyeleaf {

struct ChartedStock {
    std::string name; // by which --stock knows it
    bool own = false; // the dyer's
    Stock stock;
};

// A4 pages, the stocks in their order, at a sixth of their size; ready-cut cells have the numbers by which --used and
// --skip count them.
std::vector<DisplayList> draw_stock_chart(const std::vector<ChartedStock>& stocks, const Language& language,
                                          const Typesetter& typesetter);

} // namespace dyeleaf
