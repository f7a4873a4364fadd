// The measures of a stock, in words for paper.
#pragma once

#include "language/language.h"
#include "sheets/stock.h"

#include <string>
#include <vector>

namespace dyeleaf {

// One line each: paper, cells, margins, gutters, cuts, film.
std::vector<std::string> stock_words(const Stock& stock, const Language& language);

} // namespace dyeleaf
