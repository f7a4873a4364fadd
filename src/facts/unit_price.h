// What yarn costs by weight, so that minis, skeins and cones can be compared.
#pragma once

#include "base/quantity.h"
#include "records/money.h"

namespace dyeleaf {

// Rounded half up to the currency's minor unit. Requires: a weight of at least a tenth of a gram.
Price price_of_hundred_grams(const Price& price, Mass mass);

} // namespace dyeleaf
