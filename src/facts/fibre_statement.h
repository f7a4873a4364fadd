// The fibres of a yarn as a tag states them.
#pragma once

#include "facts/fibre_words.h"
#include "records/records.h"

#include <cstddef>
#include <string>
#include <vector>

namespace dyeleaf {

struct StatedFibre {
    std::string name; // as the market's law has it, in English: "wool"; else as written
    bool is_legal = false;
    bool virgin = false;             // claimed of it, and nothing here speaks against it
    std::vector<std::string> breeds; // to stand behind it in brackets
    Percent share;
    std::vector<std::size_t> recorded = {}; // which of the base's fibres it stands for: one or more
};

// Largest share first, equal ones as written, other fibres last. For a market with rules each fibre has the name that
// they have for it, and what is one fibre to them has one figure; without one, and where they have no name, each is
// as the dyer wrote it.
std::vector<StatedFibre> stated_fibres(const Base& base, Market market);

// Why wool that is claimed to be virgin may not be called so beside what else is in the yarn.
enum class VirginWool { not_claimed, may_be_named, no_wool, in_part, too_little, among_many, denied };
VirginWool virgin_wool(const Base& base, Market market);

} // namespace dyeleaf
