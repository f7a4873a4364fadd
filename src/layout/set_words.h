// Finds the size at which a text fits its width: as written, else smaller in steps down to its smallest, else cut.
#pragma once

#include "layout/box.h"
#include "text/typesetter.h"

#include <memory>

namespace dyeleaf {

// How a label is being tried: `shrink` is how far every text that may shrink has gone from its size (0) to its
// smallest (1), so that a crowded label shrinks evenly.
struct Trial {
    const Typesetter* typesetter = nullptr;
    double shrink = 0;
};

struct SetWords {
    std::shared_ptr<const Paragraph> paragraph;
    Length size;
    Length leading; // baseline to baseline
    bool cut = false;
    [[nodiscard]] Size extent() const;
    // From the top of the first line to its baseline: capitals stand in the middle of the line.
    Length first_baseline;
};

SetWords set_words(const Words& words, Length width, const Trial& trial);

} // namespace dyeleaf
