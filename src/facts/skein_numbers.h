// The skeins of a lot, numbered from 1. A spoilt one leaves a gap; the others keep their numbers.
#pragma once

#include "records/records.h"

#include <optional>
#include <string>
#include <vector>

namespace dyeleaf {

bool is_spoilt(const Lot& lot, int number);
std::vector<int> skeins_for_sale(const Lot& lot);
// From 0; nothing where the lot was dyed in one pot. Requires: a skein of the lot.
std::optional<int> pot_of(const Lot& lot, int number);
// "1–6, 8–14, 16"; the numbers in order.
std::string number_runs(const std::vector<int>& numbers);

} // namespace dyeleaf
