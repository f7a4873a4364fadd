// Knitting needles in millimetres and in US sizes.
#pragma once

#include "base/length.h"
#include "facts/span.h"

#include <optional>
#include <string_view>

namespace dyeleaf {

// "1.5" for 2.5 mm; nothing where there is no US size of this diameter.
std::optional<std::string_view> us_needle_size(Length diameter);
// 2.5 mm for "1.5"; nothing for what is no US size, and for those of which charts give different diameters.
std::optional<Length> needle_diameter(std::string_view us_size);

// What "2.5 mm", "2.25–2.75 mm", "US 1.5" or "US 1-3" says: two ends, which may be the
// same. Nothing for other texts, and for US sizes that are not
// sure: what the dyer wrote is then all that can be printed.
std::optional<Span<Length>> parse_needles(std::string_view text);

} // namespace dyeleaf
