// The list to read before paper is spent.
#pragma once

#include "base/date.h"
#include "base/diagnostic.h"
#include "cli/library.h"
#include "cli/options.h"

#include <optional>
#include <string>

namespace dyeleaf {

// Every label with its sheet and place, below each what is wrong with it, and how many sheets that takes. What is told
// of no single label goes to `diagnostics`, and errors go there too; nothing where nothing can be planned for them.
std::optional<std::string> proof(const Render& request, const Library& library, const Date& today,
                                 Diagnostics& diagnostics);

} // namespace dyeleaf
