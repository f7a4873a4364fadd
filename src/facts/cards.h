// Dyes in the order of a ring of cards, and how they share cards.
#pragma once

#include "facts/card_facts.h"
#include "records/records.h"

#include <vector>

namespace dyeleaf {

using Dyes = std::vector<const Dye*>;

// By line as first recorded, and by hue of the deepest swatch within it.
Dyes in_line_order(const Records& records, Dyes dyes);
// By hue alone.
Dyes in_hue_order(Dyes dyes);

// One card a dye, each with its place among all dyes of the records, so that a card printed again keeps its number.
std::vector<CardView> single_cards(const Records& records, const Dyes& wanted);
// Cards of several dyes, numbered among themselves.
std::vector<CardView> shared_cards(const Records& records, const Dyes& wanted, const Grouping& grouping);

} // namespace dyeleaf
