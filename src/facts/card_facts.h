// What can be asked of the card that one or several dyes stand on.
#pragma once

#include "facts/facts.h"
#include "records/records.h"

#include <string>
#include <vector>

namespace dyeleaf {

struct CardView {
    const Records* records = nullptr;
    std::vector<const Dye*> dyes;
    int number = 1; // of the cards of one set, from 1
    int count = 1;
    std::string group; // what its dyes have in common: a line, or hues
};

// A card's place in its set; enough where it holds one dye.
const Vocabulary& card_place_vocabulary();
// That, and its dyes.
const Vocabulary& card_vocabulary();

} // namespace dyeleaf
