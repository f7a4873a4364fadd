// Whether a label goes into a ready-cut cell whole.
#pragma once

#include "sheets/refusal.h"

namespace dyeleaf {

// Why a label, laid in the middle of a cell, would be cut into or come off the sheet in another shape, with the
// arithmetic; nothing: it fits. Printers and punches leave half a millimetre of play.
std::optional<Refusal> refusal_by_cell(const Trim& label, const Stock& stock);

} // namespace dyeleaf
