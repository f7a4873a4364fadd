// How long a jar is good. Only the dyer says so: nothing is assumed.
#pragma once

#include "records/records.h"

#include <optional>

namespace dyeleaf {

// The date she wrote; else so long after the day it was mixed as the jar, or the studio of all its jars, says. A jar
// that was topped up counts from its first filling: the oldest powder in it decides.
std::optional<Date> use_by_of(const Studio& studio, const Jar& jar);

} // namespace dyeleaf
