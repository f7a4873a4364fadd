// Hazard pictograms of the Globally Harmonized System, drawn by ourselves.
#pragma once

#include "symbols/named_drawing.h"

#include <vector>

namespace dyeleaf {

// GHS01 to GHS09: a black symbol on white in a red frame standing on a point (UN GHS 1.4.10.4, CLP Annex I 1.2.1); in
// mono printing the frame is black.
std::vector<NamedDrawing> ghs_pictograms(bool mono);

// No frame's side is shorter, whatever it stands on (CLP, Annex I, table 1.3).
inline constexpr Length least_pictogram_side = mm(10);

// The height of a pictogram whose frame has this side.
Length ghs_height(Length side);

} // namespace dyeleaf
