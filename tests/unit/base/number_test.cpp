// Numbers as text.
#include "base/number.h"

#include <catch2/catch.hpp>

using namespace dyeleaf;

TEST_CASE("decimals are read as people write them and no other way", "[base]") {
    CHECK(parse_decimal("12") == 12.0);
    CHECK(parse_decimal("-3.5") == -3.5);
    CHECK(parse_decimal("+0.25") == 0.25);
    CHECK(parse_decimal(".5") == 0.5);
    for (const char* text : {"", " 1", "1 ", "1e5", "0x10", "inf", "nan", "1,5", "1.2.3", "--1", "3-5", "٣"}) {
        INFO(text);
        CHECK_FALSE(parse_decimal(text));
    }
}

TEST_CASE("whole numbers have no point and fit", "[base]") {
    CHECK(parse_whole("0077") == 77);
    CHECK(parse_whole("-4") == -4);
    for (const char* text : {"", "1.0", "12a", "99999999999"}) {
        INFO(text);
        CHECK_FALSE(parse_whole(text));
    }
}

TEST_CASE("half rounds away from zero on the decimal that is seen", "[base]") {
    CHECK(fixed(1.005, 2) == "1.01"); // in binary a little less than 1.005
    CHECK(fixed(0.125, 2) == "0.13");
    CHECK(fixed(-0.125, 2) == "-0.13");
    CHECK(fixed(-0.001, 2) == "0.00");
    CHECK(decimal(2.50, 2) == "2.5");
    CHECK(decimal(3.0, 2) == "3");
    CHECK(decimal(100, 0) == "100");
}

TEST_CASE("significant figures are written without an exponent", "[base]") {
    CHECK(significant(0.3333, 2) == "0.33");
    CHECK(significant(33.33, 2) == "33");
    CHECK(significant(333.3, 2) == "330");
    CHECK(significant(0, 2) == "0");
    CHECK(significant(0.000123, 2) == "0.00012");
}
