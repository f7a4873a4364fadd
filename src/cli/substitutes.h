// What might stand in for a dye, for the terminal.
#pragma once

#include "base/diagnostic.h"
#include "cli/options.h"
#include "language/language.h"
#include "records/records.h"

#include <optional>
#include <string>

namespace dyeleaf {

// The nearest dyes with the reasons for and against each, those that cannot be compared, and how many were left out;
// nothing where the diagnostics have errors.
std::optional<std::string> list_substitutes(const FindSubstitutes& request, const Records& records,
                                            const Language& english, Diagnostics& diagnostics);

} // namespace dyeleaf
