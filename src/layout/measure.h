// How large a filled box wants to be.
#pragma once

#include "base/geometry.h"
#include "layout/box.h"
#include "layout/set_words.h"

#include <optional>
#include <vector>

namespace dyeleaf {

// The box with its margin, no wider than `available` where its content can give way.
Size wanted_size(const FilledBox& box, Length available, const Trial& trial);

// From the top of the box's margin to its first baseline, when it stands `width` wide; none for boxes without text.
std::optional<Length> baseline_of(const FilledBox& box, Length width, const Trial& trial);

// The widths of a row's children, margins included, in `available` less the gaps: fixed ones as they are, those by
// content in turn, shares from the rest.
std::vector<Length> row_widths(const std::vector<FilledBox>& children, Length available, Length gap,
                               const Trial& trial);

// The widths of a table's columns, likewise.
std::vector<Length> table_widths(const FilledTable& table, Length available, Length gap, const Trial& trial);

// The heights of a column's children in `available` less the gaps; shares from the rest.
std::vector<Length> column_heights(const std::vector<FilledBox>& children, Size available, Length gap,
                                   const Trial& trial);

// What lies between a box's margin and its content.
Insets frame_of(const Box& box);

// What a box of fixed width or height leaves its content inside its frame, as the content sees it.
struct FixedRoom {
    std::optional<Length> width, height;
};
FixedRoom fixed_room(const Box& box);

// What a box holds the run of a row or column with: a blank's own extent, else its width or height.
Extent extent_across(const FilledBox& box);
Extent extent_down(const FilledBox& box);

} // namespace dyeleaf
