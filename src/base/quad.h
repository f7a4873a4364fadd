// A rectangle that may stand askew.
#pragma once

#include "base/geometry.h"

#include <array>

namespace dyeleaf {

struct Quad {
    std::array<Point, 4> corners; // in turn, all round
    [[nodiscard]] Rect bounds() const;
};

Quad quad_of(const Transform& transform, Rect rect);

// Whether the insides of the two share any area beyond the length tolerance.
bool overlap(const Quad& a, const Quad& b);

} // namespace dyeleaf
