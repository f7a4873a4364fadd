// The line of exactly 100 mm by which a print is checked with a ruler: a printer that fits pages to the paper gives
// itself away.
#pragma once

#include "base/geometry.h"
#include "display/display_list.h"

#include <optional>
#include <vector>

namespace dyeleaf {

constexpr Length test_line_length = mm(100);

// A free part of a sheet, just deep enough for the line.
struct TestBand {
    Rect rect;
    bool upright = false; // the line then runs from bottom to top
};

// Room at least as long as the line, inside `margin` and clear of `occupied`: if possible deep enough for a caption
// of height `caption` under the line; at the bottom before elsewhere, lying before upright. Nothing: no room.
std::optional<TestBand> find_test_band(Size paper, Length margin, const std::vector<Rect>& occupied, Length caption);

// The line with its ticks, in sheet coordinates; the caption stands under it, or after it in a band that is too thin
// (and is left out where there is no room for it either).
Group draw_test_line(const TestBand& band, const DisplayList& caption);

} // namespace dyeleaf
