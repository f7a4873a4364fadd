// Check characters of ISO/IEC 7064.
#include "facts/check_character.h"

#include <catch2/catch.hpp>
#include <string>

using namespace dyeleaf;

namespace {

struct System {
    CheckSystem system;
    std::string alphabet;
};
const System systems[] = {{CheckSystem::mod_11_10, "0123456789"},
                          {CheckSystem::mod_27_26, "ABCDEFGHIJKLMNOPQRSTUVWXYZ"},
                          {CheckSystem::mod_37_36, "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ"}};

} // namespace

TEST_CASE("check characters are those that others publish", "[facts]") {
    struct Case {
        CheckSystem system;
        const char* text;
        char check;
    };
    const Case cases[] = {
        // The tests of python-stdnum, stdnum.iso7064.
        {CheckSystem::mod_11_10, "0794", '5'},
        {CheckSystem::mod_11_10, "1232", '3'},
        {CheckSystem::mod_11_10, "54679", '4'},
        {CheckSystem::mod_11_10, "00200667308", '5'},
        {CheckSystem::mod_11_10, "00200667309", '3'},
        {CheckSystem::mod_11_10, "00200667310", '8'},
        {CheckSystem::mod_11_10, "00200667311", '6'},
        {CheckSystem::mod_11_10, "00200667312", '4'},
        {CheckSystem::mod_37_36, "A12425GABC1234002", 'M'},
        // Worked out step by step from the standard's rule, by another program.
        {CheckSystem::mod_37_36, "A12425GABC1234003", 'K'},
        {CheckSystem::mod_37_36, "LOT0001", 'V'},
        {CheckSystem::mod_37_36, "LOT0002", 'T'},
        {CheckSystem::mod_37_36, "DL2025A", 'P'},
        {CheckSystem::mod_37_36, "2025W41B", 'K'},
        {CheckSystem::mod_37_36, "A1B2C3", '3'},
        // The tests of CheckDigits.Net.
        {CheckSystem::mod_27_26, "QWERTYDVORAK", 'Y'},
    };
    for (const auto& [system, text, check] : cases) {
        INFO(text);
        CHECK(check_character(system, text) == check);
    }
}

TEST_CASE("other alphabets have no check character", "[facts]") {
    CHECK_FALSE(check_character(CheckSystem::mod_37_36, ""));
    CHECK_FALSE(check_character(CheckSystem::mod_37_36, "26-117"));
    CHECK_FALSE(check_character(CheckSystem::mod_37_36, "26a"));
    CHECK_FALSE(check_character(CheckSystem::mod_27_26, "A1"));
    CHECK_FALSE(check_character(CheckSystem::mod_11_10, "1A"));
}

// What ISO/IEC 7064 promises of its systems.
TEST_CASE("a single wrong character always shows", "[facts]") {
    for (const auto& [system, alphabet] : systems) {
        std::size_t unseen = 0;
        for (const char first : alphabet) {
            const std::string code{first, alphabet[3], alphabet[7]};
            for (std::size_t at = 0; at < code.size(); ++at) {
                for (const char other : alphabet) {
                    std::string wrong = code;
                    wrong[at] = other;
                    if (wrong != code && check_character(system, wrong) == check_character(system, code)) ++unseen;
                }
            }
        }
        CHECK(unseen == 0);
    }
}

// Whatever stands before a pair leaves one of M states, and each state is reached by one first character. In each, the
// hybrid systems miss one of the M (M - 1) / 2 pairs.
TEST_CASE("swapped neighbours show, all but a few", "[facts]") {
    for (const auto& [system, alphabet] : systems) {
        std::size_t missed = 0;
        for (const char before : alphabet) {
            for (std::size_t a = 0; a < alphabet.size(); ++a) {
                for (std::size_t b = a + 1; b < alphabet.size(); ++b) {
                    const std::string code{before, alphabet[a], alphabet[b]};
                    const std::string swapped{before, alphabet[b], alphabet[a]};
                    if (check_character(system, code) == check_character(system, swapped)) ++missed;
                }
            }
        }
        CHECK(missed == alphabet.size());
    }
}
