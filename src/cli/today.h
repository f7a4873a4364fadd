// Today's date, for everything that is printed: the only clock there is.
#pragma once

#include "base/date.h"
#include "base/diagnostic.h"

#include <optional>
#include <string>

namespace dyeleaf {

// `asked_for` if there is one; else `source_date_epoch`, the variable SOURCE_DATE_EPOCH of reproducible-builds.org:
// seconds since 1970 in UTC; else the machine's local date. An epoch that is no whole number is an error.
std::optional<Date> today(const std::optional<Date>& asked_for, const std::optional<std::string>& source_date_epoch,
                          Diagnostics& diagnostics);

} // namespace dyeleaf
