// What there is, as tables for the terminal.
#pragma once

#include "cli/library.h"
#include "records/records.h"

#include <string>

namespace dyeleaf {

// "36 dyes, 8 jars, 4 bases, 5 lots"; kinds of which there are none are left out.
std::string count_records(const Records& records);
// Every record by its id, which is what --only takes.
std::string list_records(const Records& records, const Language& language);

// Files that cannot be read are complained of and left out.
std::string list_layouts(const Library& library, Diagnostics& diagnostics);
std::string list_stocks(const Library& library, Diagnostics& diagnostics);

} // namespace dyeleaf
