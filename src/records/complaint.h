// What is wrong with something written, in the dyer's words.
#pragma once

#include "base/words.h"

#include <string>
#include <string_view>

namespace dyeleaf {

struct Complaint {
    std::string message;
    std::string help; // what to write instead
};

// The dyer's own text in a message, cut where it is long.
inline std::string shown(std::string_view text) {
    return in_quotes(shortened(text, 40));
}

} // namespace dyeleaf
