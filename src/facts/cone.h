// The wall of a tapering jar laid out flat: a sector of a ring.
#pragma once

#include "base/length.h"

#include <optional>

namespace dyeleaf {

struct FlatCone {
    Length slope;                                                       // of the wall, from edge to edge
    Length inner, outer;                                                // radii of the narrow and the wide edge
    double angle = 0;                                                   // once round the jar, in radians
    [[nodiscard]] Length middle() const { return (inner + outer) / 2; } // radius half way up the slope
};

// Of a wall with these diameters at its two ends, `height` apart, upright. Nothing where the wall is straight.
// s = √(h² + (R − r)²), ρ₂ = sR / (R − r), ρ₁ = ρ₂ − s, θ = 2π (R − r) / s: the development of a cone, as in textbooks
// of descriptive geometry.
std::optional<FlatCone> flat_cone(Length diameter, Length other, Length height);

// Along the wall from edge to edge.
Length slope_of(Length diameter, Length other, Length height);

// How far the middle of an arc of this length stands out from the straight line between its ends: nearly ρ (φ/2)² / 2.
Length dip(Length arc, Length radius);

} // namespace dyeleaf
