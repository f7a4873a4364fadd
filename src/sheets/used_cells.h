// Cells of a part-used sheet as they are written: "1-4,7,12", counted row by row from 1.
#pragma once

#include <optional>
#include <set>
#include <string>
#include <string_view>

namespace dyeleaf {

constexpr int most_cells = 999; // more than any sheet holds

// Nothing where the text is no such list, a range runs backwards, or a number is 0 or above `most_cells`.
std::optional<std::set<int>> parse_cells(std::string_view text);

// The shortest way to write them; empty for none.
std::string cell_list(const std::set<int>& cells);

} // namespace dyeleaf
