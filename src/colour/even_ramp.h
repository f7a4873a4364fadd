// Shades from the lightest to the deepest that was recorded, in steps that look equally large.
#pragma once

#include "colour/shade_curve.h"

#include <vector>

namespace dyeleaf {

struct RampShade {
    Percent depth;
    Lab colour;
    bool is_estimated = false; // between two that were recorded
};

// Five to nine of them where the shades differ enough: steps are at least 2 in ΔE00, below which the eye, and the
// estimate, tell little (common practice). Recorded shades stand among them as they are, save those that lie too near
// to others to keep the steps even; the depths of the rest have two significant figures, as a scale can weigh them,
// which costs a little evenness, and lie strictly between the depths beside them. Empty where nothing is estimated:
// shades that hardly differ, or that are many enough. `recorded` as ShadeCurve requires it; fewer than two give
// nothing.
std::vector<RampShade> even_ramp(const std::vector<Shade>& recorded);

} // namespace dyeleaf
