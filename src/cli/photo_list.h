// The colours that were read from photographs, for the terminal.
#pragma once

#include "records/records.h"

#include <string>

namespace dyeleaf {

// A heading, a line for each, and what its figures are; empty where there are none.
std::string list_photo_colours(const Records& records);

} // namespace dyeleaf
