// Knitting needles in millimetres and in US sizes.
#pragma once

#include "base/length.h"

#include <optional>
#include <string>
#include <string_view>

namespace dyeleaf {

// "1.5" for 2.5 mm; nothing where there is no US size of this diameter.
std::optional<std::string_view> us_needle_size(Length diameter);
// 2.5 mm for "1.5"; nothing for what is no US size, and for those of which charts give different diameters.
std::optional<Length> needle_diameter(std::string_view us_size);

// One size or a range of them, in both ways of saying it.
struct NeedleSizes {
    std::string metric; // "2.25–2.75", the unit left to the words
    std::string us;     // "1–2"
};

// What "2.5 mm", "2.25–2.75 mm", "US 1.5" or "US 1-3" says. Nothing for other texts, and where one of the sizes has no
// sure counterpart: what the dyer wrote is then all that can be printed.
std::optional<NeedleSizes> parse_needles(std::string_view text);

// From `least` to `most`, which may be the same; as above.
std::optional<NeedleSizes> needle_sizes(Length least, Length most);

} // namespace dyeleaf
