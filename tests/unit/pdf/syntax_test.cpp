#include "pdf/syntax.h"

#include "pdf/page_matrix.h"

#include <catch2/catch.hpp>

using namespace dyeleaf;

namespace {

std::string number(double value, int decimals) {
    std::string text;
    append_number(text, value, decimals);
    return text;
}

} // namespace

TEST_CASE("numbers are as short as they can be", "[pdf]") {
    CHECK(number(0, 2) == "0");
    CHECK(number(-0.004, 2) == "0");
    CHECK(number(1, 2) == "1");
    CHECK(number(0.25, 2) == ".25");
    CHECK(number(-0.25, 2) == "-.25");
    CHECK(number(12.5, 3) == "12.5");
    CHECK(number(595.2756, 4) == "595.2756");
    CHECK(number(2.999, 2) == "3");
    CHECK(number(-100.05, 2) == "-100.05");
    CHECK(number(7, 0) == "7");
    CHECK(number(1e300, 2) == "1000000000");
}

// ISO 32000-1, 7.3.4.2 and 7.9.2.2; UTF-16 by RFC 2781, section 2.1.
TEST_CASE("texts are ASCII in brackets, or UTF-16", "[pdf]") {
    CHECK(text_string("Sloe") == "(Sloe)");
    CHECK(text_string("a (b) \\") == "(a \\(b\\) \\\\)");
    CHECK(text_string("€") == "<FEFF20AC>");
    CHECK(text_string("ö") == "<FEFF00F6>");
    CHECK(text_string("\U0001F9F6") == "<FEFFD83EDDF6>");
    CHECK(byte_string("a\rb") == "(a\\rb)");
    CHECK(text_string("") == "()");
}

TEST_CASE("a matrix undone is none", "[pdf]") {
    const PageMatrix m{2, 1, -1, 3, 10, 20};
    const PageMatrix none = m.inverse().after(m);
    CHECK(none.a == Approx(1));
    CHECK(none.b == Approx(0).margin(1e-12));
    CHECK(none.c == Approx(0).margin(1e-12));
    CHECK(none.d == Approx(1));
    CHECK(none.e == Approx(0).margin(1e-12));
    CHECK(none.f == Approx(0).margin(1e-12));
    CHECK(m.apply(1, 1) == std::pair{11.0, 24.0});
}
