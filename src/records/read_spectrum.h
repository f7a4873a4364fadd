// A reflectance curve out of a record.
#pragma once

#include "colour/spectrum.h"
#include "source/document.h"

#include <optional>
#include <string>

namespace dyeleaf {

// {reflectance: [12.1, 13.4, …], from: 400 nm, step: 10 nm}: percent, in steps of 5, 10 or 20 nm, over 420 to 680 nm at
// least; `to: 700 nm` may be added, and then the number of values is checked. Up to 250 %, since what glows in daylight
// sends back more than fell on it there. Shares from 0 to 1 are an error.
std::optional<Spectrum> read_spectrum(const Node& node, const std::string& what, Diagnostics& diagnostics);

} // namespace dyeleaf
