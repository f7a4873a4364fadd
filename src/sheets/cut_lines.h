// Cuts that several labels share, as lines in the colour of the sheet's own ink.
#pragma once

#include "base/geometry.h"

#include <vector>

namespace dyeleaf {

struct CutLine {
    Point from, to; // lying or upright
};

constexpr Length cut_line_width = pt(0.25);

// Along every edge of every label, just outside it, right across `areas[i]`; none where it would lie on one of `inked`,
// the labels with their bleed.
std::vector<CutLine> full_cut_lines(const std::vector<Rect>& labels, const std::vector<Rect>& areas,
                                    const std::vector<Rect>& inked);

// For labels that touch: at both ends of every cut one mark of `length`, `offset` outside the block of them all.
std::vector<CutLine> shared_cut_marks(const std::vector<Rect>& labels, Length offset, Length length);

} // namespace dyeleaf
