// The hazard pictograms: a square set on a point, a black symbol on white ground in a red frame (UN GHS 1.4.10.4; CLP,
// annex I, 1.2.1). The drawings are our own.
#pragma once

#include "symbols/pen.h"

namespace dyeleaf {

// No shade of red is laid down; this one is clearly red on screen and in print.
inline constexpr Rgb frame_red{0.86, 0.04, 0.10};

// On a sheet of 100 × 100 units whose edges the frame's corners touch; symbols lie inside it, in the same units.
DisplayList framed(Ink symbol, Rgb frame);

Ink exploding_bomb();
Ink flame();
Ink flame_over_circle();
Ink gas_cylinder();
Ink corrosion();
Ink skull_and_crossbones();
Ink exclamation_mark();
Ink health_hazard();
Ink environment();

} // namespace dyeleaf
