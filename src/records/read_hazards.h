// The codes of the supplier's safety data sheet.
#pragma once

#include "records/records.h"
#include "source/document.h"

#include <optional>
#include <string>
#include <vector>

namespace dyeleaf {

// Each as the sheet gives it: H317, EUH208, H302+H312, with the category where its label depends on that (H228 cat 2);
// or {code: EUH208, says: "…"} where the sheet's own words fill in a name or a choice. A code that does not exist and a
// category that its code does not have are errors.
std::optional<std::vector<Hazard>> read_hazards(const Node& node, const std::string& what, Diagnostics& diagnostics);

// P261, P305+P351+P338, or {code: P264, says: "…"}. Any codes may be combined, as on sheets. A code that does not exist
// is an error, but for one whose text the record gives: older sheets have some that are gone from the lists.
std::optional<std::vector<Precaution>> read_precautions(const Node& node, const std::string& what,
                                                        Diagnostics& diagnostics);

} // namespace dyeleaf
