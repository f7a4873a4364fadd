// Every fact of one record as text: name, value, unit, how it was derived and from which source.
#pragma once

#include "facts/items.h"
#include "records/records.h"

#include <string>

namespace dyeleaf {

// Of the dye, jar, base or lot with this id, or of one skein: "26-117:3". One that is not there is an error with the
// nearest id; several records of one id are listed one after the other.
std::string list_facts(const Records& records, const std::string& id, const Printing& printing,
                       Diagnostics& diagnostics);

} // namespace dyeleaf
