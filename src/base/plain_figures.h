// Figures in messages to the dyer, which are not printed and so know no language.
#pragma once

#include "base/quantity.h"

#include <string>

namespace dyeleaf {

std::string plain(Mass mass);     // "2.35 g"
std::string plain(Volume volume); // "7.5 mL"
std::string plain(Percent share); // as recorded: "0.25 %"

} // namespace dyeleaf
