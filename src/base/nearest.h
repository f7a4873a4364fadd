// The closest known word, for "did you mean".
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace dyeleaf {

// How many letters must be put in, left out, changed or swapped with their neighbour (optimal string alignment).
int edit_distance(std::string_view a, std::string_view b);

// The known word nearest to `word`, ignoring case: a letter away, else the only one of which it is the beginning or the
// last word, else as near as a slip can be.
std::optional<std::string> nearest(std::string_view word, const std::vector<std::string>& known);

// "did you mean “sloe”?" where there is a near word, else "known here: a, b, c".
std::string suggest(std::string_view word, const std::vector<std::string>& known);

} // namespace dyeleaf
