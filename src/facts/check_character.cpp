#include "facts/check_character.h"

namespace dyeleaf {

namespace {

constexpr std::string_view figures_and_letters = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ";

// A character's value is its place.
constexpr std::string_view alphabet_of(CheckSystem system) {
    switch (system) {
    case CheckSystem::mod_11_10: return figures_and_letters.substr(0, 10);
    case CheckSystem::mod_27_26: return figures_and_letters.substr(10);
    case CheckSystem::mod_37_36: break;
    }
    return figures_and_letters;
}

} // namespace

// ISO/IEC 7064, hybrid systems MOD M+1,M: sums modulo M, in which M stands for 0, are doubled modulo M + 1; the check
// character brings the last sum to 1.
std::optional<char> check_character(CheckSystem system, std::string_view text) {
    const std::string_view alphabet = alphabet_of(system);
    const std::size_t modulus = alphabet.size();
    if (text.empty()) return std::nullopt;
    std::size_t product = modulus;
    for (const char character : text) {
        const std::size_t value = alphabet.find(character);
        if (value == std::string_view::npos) return std::nullopt;
        const std::size_t sum = (product + value) % modulus;
        product = 2 * (sum == 0 ? modulus : sum) % (modulus + 1);
    }
    return alphabet[(modulus + 1 - product) % modulus];
}

} // namespace dyeleaf
