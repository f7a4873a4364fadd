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

// The least side of a pictogram on a supply label of this size, for packages of up to 3 litres: a fifteenth of the
// label's area and never below 10 mm (Regulation (EC) No 1272/2008 (CLP), Annex I, 1.2.1.4 and table 1.3). The label
// itself should be 52 × 74 mm if possible, which makes it 16 mm.
Length supply_side(Size label);

} // namespace dyeleaf
