// What skeins hold, as it is written: in metric units, in imperial ones, or in both as mills print it.
#pragma once

#include "records/records.h"
#include "source/document.h"

#include <optional>
#include <string>
#include <vector>

namespace dyeleaf {

// "100 g", "3.5 oz", "100 g / 3.5 oz": the first is the one that is worked with. Two that differ by more than a
// hundredth bring a warning.
std::optional<SkeinFigure<Mass>> read_skein_mass(const Node& node, const std::string& what, Diagnostics& diagnostics);
// "400 m", "437 yd", "400 m / 437 yd".
std::optional<SkeinFigure<Length>> read_skein_length(const Node& node, const std::string& what,
                                                     Diagnostics& diagnostics);

// {weight: 100 g, length: 420 m}, both needed.
SkeinSize read_skein(const Node& node, Diagnostics& diagnostics);

// {7: 63 g, 9: {weight: 80 g, price: 16.00}}: skeins of a lot by their numbers. Requires: a lot whose skeins and spoilt
// ones are read.
std::vector<OddSkein> read_odd_skeins(const Node& node, const Lot& lot, const Currency& currency,
                                      Diagnostics& diagnostics);

} // namespace dyeleaf
