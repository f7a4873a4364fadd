// A dye's shades on one base in even steps, recorded and estimated.
#pragma once

#include "colour/even_ramp.h"
#include "records/records.h"

#include <optional>
#include <string>
#include <vector>

namespace dyeleaf {

// The colours that are recorded of it there, lightest depth first; of a depth recorded twice, the last (swatch_at).
std::vector<Shade> recorded_shades(const Dye& dye, const std::string& base_id);

// Empty where there is nothing between two recorded depths to estimate, and of a fluorescent dye, which no ink shows.
std::vector<RampShade> ramp_on(const Dye& dye, const std::string& base_id);

// The id of the base with a ramp that has most depths with a colour, the first recorded of equal ones.
std::optional<std::string> best_ramp_base(const Dye& dye);

} // namespace dyeleaf
