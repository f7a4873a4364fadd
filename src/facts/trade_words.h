// Words that sellers of yarn use as if they were fibres.
#pragma once

#include "records/records.h"

#include <optional>
#include <string>
#include <string_view>

namespace dyeleaf {

// What to write in place of a word that could be one of several fibres: for sparkle, what its thread is made of.
// Nothing where the word is not known.
std::optional<std::string> in_place_of(std::string_view word, Market market);

} // namespace dyeleaf
