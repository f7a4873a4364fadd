#include "text/plain_text.h"

#include <catch2/catch.hpp>

using namespace dyeleaf;

TEST_CASE("what the eye cannot see is dropped", "[text]") {
    // Directional embeddings, overrides, isolates and marks; zero-width space and word joiner; byte order mark.
    CHECK(plain_text("a\u202Eb\u202C\u2066c\u2069\u200Fd\u200Be\u2060f\uFEFFg") == "abcdefg");
    CHECK(plain_text("a\u0001b\u007Fc\u0085d") == "abc\nd");
    CHECK(plain_text("❤\uFE0F") == "❤");
}

TEST_CASE("joiners and soft hyphens shape words and stay", "[text]") {
    CHECK(plain_text("می\u200Cخواهم") == "می\u200Cخواهم");
    CHECK(plain_text("Indigo\u00ADkarmin") == "Indigo\u00ADkarmin");
}

TEST_CASE("every kind of line end is one, and blanks before it go", "[text]") {
    CHECK(plain_text("a \r\nb\rc\u2028d\te\n \n") == "a\nb\nc\nd e");
    CHECK(plain_text("  a") == "  a");
    CHECK(plain_text(" \n ") == "");
}

TEST_CASE("bytes that are not UTF-8 show as the replacement character", "[text]") {
    CHECK(plain_text("a\xFFz") == "a\uFFFDz");
}

TEST_CASE("a character is taken out wherever it stands", "[text]") {
    CHECK(without("漢a漢漢b", "漢") == "ab");
    CHECK(without("ab", "漢") == "ab");
}
