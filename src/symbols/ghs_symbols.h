// The nine symbols inside the frames, each drawn by hand after what the standard calls it (UN GHS 1.4.10.4,
// table 1.4.1).
#pragma once

#include "symbols/pen.h"

namespace dyeleaf::drawing {

// The square standing on its point: frame and white ground.
Ink frame(bool mono);

Ink exploding_bomb();
Ink flame();
Ink flame_over_circle();
Ink gas_cylinder();
Ink corrosion();
Ink skull_and_crossbones();
Ink exclamation_mark();
Ink health_hazard();
Ink environment();

} // namespace dyeleaf::drawing
