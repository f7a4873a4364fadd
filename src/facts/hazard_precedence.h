// What of all that the suppliers' sheets give stands on one label: rules of precedence, on codes alone.
#pragma once

#include "records/hazard_classes.h"
#include "records/records.h"

#include <optional>
#include <vector>

namespace dyeleaf {

struct HazardLabel {
    std::optional<SignalWord> signal;
    std::vector<Pictogram> pictograms; // each once: those of the graver classes first, then by number
    std::vector<Hazard> statements;    // each once: H codes, then EUH codes, by number
};

// The hazards may be those of several powders together: what one of them has, the mix has. Requires: codes that exist.
HazardLabel label_of(const std::vector<Hazard>& hazards);

// Each once, by number; a code that is part of a combination in the list goes with it.
std::vector<Precaution> precautions_of(const std::vector<Precaution>& precautions);

// The class of the recorded category; the gravest of the code's where none is recorded. Requires: a code that exists.
const HazardClass& class_of(const Hazard& hazard);

} // namespace dyeleaf
