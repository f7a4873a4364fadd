// What is better known before a jar is mixed or trusted.
#pragma once

#include "base/diagnostic.h"
#include "records/records.h"

namespace dyeleaf {

// Warns of a strength that nobody can know, of one that rounding or a top-up changed, of parts too small for the scale,
// of a jar too full to mix, and of one that holds more than was put in.
void check_mix(const Records& records, const Jar& jar, Diagnostics& diagnostics);

// Warns of a jar that was to be used before `today`.
void check_use_by(const Records& records, const Jar& jar, const Date& today, Diagnostics& diagnostics);

// Common practice: less than ten steps of the scale are known too badly, half a step being 5 % and more of them.
bool is_too_small(Mass mass, Mass scale_step);

} // namespace dyeleaf
