// Dates as people write them elsewhere.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace dyeleaf {

// What a date in another form means, as records write it: "28 March 2026" and "28/3/2026" are 2026-03-28, "3.2026" is
// 2026-03. Two dates where day and month could be either, none where the text is no date or has a year of two digits.
std::vector<std::string> guess_dates(std::string_view text);

} // namespace dyeleaf
