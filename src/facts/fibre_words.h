// What a dyer writes for a fibre, taken apart.
#pragma once

#include "facts/fibre_kinds.h"
#include "records/records.h"

#include <string>
#include <string_view>

namespace dyeleaf {

struct FibreWord {
    const FibreKind* kind = nullptr; // none: the word is no fibre known here
    std::string name;                // the fibre alone: "wool" of "superwash merino wool", "nylon"
    std::string breed;               // of the animal or plant, as it prints: "merino"; empty where none is named
    std::string besides;             // what belongs elsewhere: "superwash", "organic"; empty where there is nothing
    bool sole = false;               // “100 %”, “pure” or “all”
    bool virgin = false;
    bool recycled = false;
    bool superwash = false;
};

// Letters' case, accents and hyphens do not count.
FibreWord read_fibre_word(std::string_view written);

// The name that the market's law has for the fibre: the one written where it is among those allowed, else the usual
// one. Empty where the law has none. Requires: a kind, and a market other than none.
std::string legal_name(const FibreWord& word, Market market);

// All that a market's law knows, for “did you mean”.
std::vector<std::string> legal_names(Market market);

} // namespace dyeleaf
