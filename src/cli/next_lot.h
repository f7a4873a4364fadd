// A new lot, ready to be filled in.
#pragma once

#include "base/date.h"
#include "base/diagnostic.h"
#include "records/records.h"

#include <string>

namespace dyeleaf {

// YAML with remarks, to be pasted below the last lot: the next free code for a lot begun on `day`, and a line for each
// thing that a lot needs. An error when there is no code left.
std::string next_lot(const Records& records, const Date& day, Diagnostics& diagnostics);

} // namespace dyeleaf
