#include "sheets/used_cells.h"

#include "base/number.h"
#include "base/words.h"

#include <vector>

namespace dyeleaf {

namespace {

std::optional<int> parse_cell(std::string_view text) {
    const auto number = parse_whole(trimmed(text));
    return number && *number >= 1 && *number <= most_cells ? number : std::nullopt;
}

} // namespace

std::optional<std::set<int>> parse_cells(std::string_view text) {
    std::set<int> cells;
    for (bool more = true; more;) {
        const auto comma = text.find(',');
        const std::string_view part = text.substr(0, comma);
        const auto dash = part.find('-');
        const auto first = parse_cell(part.substr(0, dash));
        const auto last = dash == std::string_view::npos ? first : parse_cell(part.substr(dash + 1));
        if (!first || !last || *last < *first) return std::nullopt;
        for (int cell = *first; cell <= *last; ++cell)
            cells.insert(cell);
        more = comma != std::string_view::npos;
        if (more) text.remove_prefix(comma + 1);
    }
    return cells;
}

std::string cell_list(const std::set<int>& cells) {
    std::vector<std::string> parts;
    for (auto cell = cells.begin(); cell != cells.end();) {
        const int first = *cell;
        int last = first;
        for (++cell; cell != cells.end() && *cell == last + 1; ++cell)
            last = *cell;
        parts.push_back(std::to_string(first) + (last > first ? "-" + std::to_string(last) : ""));
    }
    return joined(parts, ",");
}

} // namespace dyeleaf
