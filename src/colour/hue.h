// Colours in the order in which a dyer would lay them out, and the plain words for where one stands in it.
#pragma once

#include "base/colour.h"

#include <compare>
#include <optional>

namespace dyeleaf {

// From pink over red round to violet; greys (black and white among them) apart.
enum class HueFamily { pink, red, orange_brown, yellow, green, turquoise, blue, violet, grey };

// Where a colour stands: by family, and by hue within it, greys from light to dark. Colours that are not recorded
// come last.
struct HueKey {
    int family = 0;
    double within = 0;
    friend constexpr auto operator<=>(HueKey, HueKey) = default;
};

HueFamily hue_family(Lab colour);
HueKey hue_key(const std::optional<Lab>& colour);

} // namespace dyeleaf
