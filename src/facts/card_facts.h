// What can be asked of the card that one or several dyes stand on.
#pragma once

#include "facts/facts.h"
#include "records/records.h"

#include <vector>

namespace dyeleaf {

// How dyes share a label: at most `most` on one, in hue order or by line; a new line starts a new label.
enum class Together { by_line, by_hue };
struct Grouping {
    int most = 1;
    Together together = Together::by_line;
};

struct CardView {
    const Records* records = nullptr;
    std::vector<const Dye*> dyes;
    int number = 1; // of the cards of one set, from 1
    int count = 1;
    Together together = Together::by_line; // what its dyes have in common
};

// A card's place in its set; enough where it holds one dye.
const Vocabulary& card_place_vocabulary();
// That, and its dyes.
const Vocabulary& card_vocabulary();

} // namespace dyeleaf
