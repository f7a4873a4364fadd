// A character added to a code by which slips in copying it show.
#pragma once

#include <optional>
#include <string_view>

namespace dyeleaf {

// The hybrid systems of ISO/IEC 7064, each with one check character from the code's own alphabet. They find every
// single wrong character, and of swapped neighbours all but one in 45, 325 and 630.
enum class CheckSystem {
    mod_11_10, // figures
    mod_27_26, // capital letters
    mod_37_36, // figures and capital letters
};

// Nothing where the text is empty or has a character from outside the system's alphabet.
std::optional<char> check_character(CheckSystem system, std::string_view text);

} // namespace dyeleaf
