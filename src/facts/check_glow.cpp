#include "facts/check_glow.h"

#include "base/number.h"

#include <algorithm>

namespace dyeleaf {

namespace {

// An instrument is set to its white tile to about a percent (common practice).
constexpr double most = 1.02;

} // namespace

void check_glow(const std::optional<Sourced<RecordedColour>>& colour, const std::string& whose,
                Diagnostics& diagnostics) {
    const auto* curve = colour ? std::get_if<Spectrum>(&colour->value) : nullptr;
    if (curve == nullptr) return;
    const auto peak = std::ranges::max_element(curve->reflectance);
    if (*peak <= most) return;
    const auto index = static_cast<int>(peak - curve->reflectance.begin());
    diagnostics.warning(colour->spot,
                        "the curve of " + whose + " goes up to " + decimal(*peak * 100, 1) + " % at " +
                            std::to_string(curve->from + curve->step * index) +
                            " nm: more light than falls on it there",
                        "a dye that glows in daylight does that: write fluorescent: yes at it; else set the instrument "
                        "to its white tile and measure again");
}

} // namespace dyeleaf
