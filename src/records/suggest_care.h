// What may have been meant by a care treatment that records do not know.
#pragma once

#include <string>
#include <string_view>

namespace dyeleaf {

// The help of a complaint: the treatment of that wording or spelt nearly so, else those of the process that the text
// speaks of. Never one that allows what the text forbids, the other way round, or one of another temperature.
std::string suggest_care(std::string_view text);

} // namespace dyeleaf
