#include "records/plain_letters.h"

#include "base/words.h"

#include <array>

namespace dyeleaf {

namespace {

// U+00C0 to U+017F (Latin-1 Supplement and Latin Extended-A): the base letter of each by its decomposition in the
// Unicode Character Database; ligatures and letters without one as they are commonly spelt out.
constexpr unsigned first_letter = 0xC0;
constexpr std::array<std::string_view, 192> folded = {
    "a", "a", "a",  "a",  "a", "a", "ae", "c", "e", "e", "e", "e", "i", "i", "i",  "i",  // U+00C0
    "d", "n", "o",  "o",  "o", "o", "o",  " ", "o", "u", "u", "u", "u", "y", "th", "ss", // U+00D0
    "a", "a", "a",  "a",  "a", "a", "ae", "c", "e", "e", "e", "e", "i", "i", "i",  "i",  // U+00E0
    "d", "n", "o",  "o",  "o", "o", "o",  " ", "o", "u", "u", "u", "u", "y", "th", "y",  // U+00F0
    "a", "a", "a",  "a",  "a", "a", "c",  "c", "c", "c", "c", "c", "c", "c", "d",  "d",  // U+0100
    "d", "d", "e",  "e",  "e", "e", "e",  "e", "e", "e", "e", "e", "g", "g", "g",  "g",  // U+0110
    "g", "g", "g",  "g",  "h", "h", "h",  "h", "i", "i", "i", "i", "i", "i", "i",  "i",  // U+0120
    "i", "i", "ij", "ij", "j", "j", "k",  "k", "k", "l", "l", "l", "l", "l", "l",  "l",  // U+0130
    "l", "l", "l",  "n",  "n", "n", "n",  "n", "n", "n", "n", "n", "o", "o", "o",  "o",  // U+0140
    "o", "o", "oe", "oe", "r", "r", "r",  "r", "r", "r", "s", "s", "s", "s", "s",  "s",  // U+0150
    "s", "s", "t",  "t",  "t", "t", "t",  "t", "u", "u", "u", "u", "u", "u", "u",  "u",  // U+0160
    "u", "u", "u",  "u",  "w", "w", "y",  "y", "y", "z", "z", "z", "z", "z", "z",  "s",  // U+0170
};

} // namespace

std::string plain_letters(std::string_view text) {
    std::string plain;
    for (std::size_t at = 0; at < text.size(); ++at) {
        const auto lead = static_cast<unsigned char>(text[at]);
        if ((lead == 0xCC || lead == 0xCD) && at + 1 < text.size()) { // a mark written as a character of its own
            ++at;
            continue;
        }
        const bool two_bytes = lead >= 0xC3 && lead <= 0xC5 && at + 1 < text.size();
        if (!two_bytes) {
            plain += text[at];
            continue;
        }
        const unsigned letter = (lead & 0x1FU) << 6U | (static_cast<unsigned char>(text[++at]) & 0x3FU);
        plain += folded[letter - first_letter];
    }
    return lower_case(plain);
}

} // namespace dyeleaf
