// To which side one colour lies of another, as dyers say it: lighter, duller, towards blue.
#pragma once

#include "base/colour.h"

#include <optional>

namespace dyeleaf {

enum class Pole { red, yellow, green, blue }; // the ends of the axes of CIELAB

struct Leaning {
    int lightness = 0;       // 1 lighter, -1 darker, 0 not to be told
    int strength = 0;        // 1 brighter, -1 duller (chroma)
    std::optional<Pole> hue; // towards which its hue has moved
};

// What is less than one unit of ΔL*, ΔC*ab or ΔH*ab (ISO/CIE 11664-4) is not to be told. The hue moves towards the pole
// that it has ahead of it, so that a yellow is redder or greener; greys lean along the axis on which they differ more
// (common practice).
Leaning leaning(Lab from, Lab to);

} // namespace dyeleaf
