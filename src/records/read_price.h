// Prices as they are written: a plain number in the studio's currency.
#pragma once

#include "records/money.h"
#include "source/document.h"

#include <optional>

namespace dyeleaf {

// More than nothing. Without a code in the currency, a price is an error.
std::optional<Price> read_price(const Node& node, const Currency& currency, Diagnostics& diagnostics);

} // namespace dyeleaf
