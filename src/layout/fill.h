// Puts one item's facts into a design's boxes.
#pragma once

#include "facts/facts.h"
#include "layout/box.h"

#include <optional>

namespace dyeleaf {

// The box with its holes filled, or nothing where it is left out. The design must outlive the result.
std::optional<FilledBox> fill(const Box& box, const Facts& facts);

// The least size of a caution's letters: trade rules that no layout may undercut.
Length least_caution_size(CautionKind kind, bool brief);

} // namespace dyeleaf
