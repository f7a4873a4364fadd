// Letters of ids.
#include "records/plain_letters.h"

#include <catch2/catch.hpp>

using namespace dyeleaf;

TEST_CASE("marks on Latin letters are dropped", "[records]") {
    CHECK(plain_letters("Crème Brûlée") == "creme brulee");
    CHECK(plain_letters("ÀÿĀſŁĲÞß") == "ayaslijthss");
    CHECK(plain_letters("Cafe\u0301") == "cafe"); // a mark as a character of its own
    CHECK(plain_letters("2×3 ¼") == "2 3 ¼");
    CHECK(plain_letters("Ωλ🐑") == "Ωλ🐑");
    CHECK(plain_letters("a\xC3") == "a\xC3");
}
