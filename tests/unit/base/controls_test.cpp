#include "base/controls.h"

#include <catch2/catch.hpp>

using namespace dyeleaf;

TEST_CASE("controls are found and shown", "[base]") {
    CHECK_FALSE(find_control("Møss – 麻, two\tlines\r\n"));
    CHECK_FALSE(find_control(""));
    CHECK(find_control(std::string_view{"a\0b", 3})->at == 1);
    CHECK_FALSE(find_control("a\x7f")->turns_text);
    CHECK(with_controls_shown("a\x1b[31mb\u0085c\uFEFFd") == "a.[31mb.c.d");
    CHECK(with_controls_shown("a\tb\r\nc\xff\x9b\xe2\x82") == "a b..c....");
    CHECK(with_controls_shown("Møss – 麻 \"<&>") == "Møss – 麻 \"<&>");
}

// Every character with the property Bidi_Control of the Unicode Character Database, and neighbours without it.
TEST_CASE("marks that turn text are told from other controls", "[base]") {
    for (const char* mark : {"\u061C", "\u200E", "\u200F", "\u202A", "\u202B", "\u202C", "\u202D", "\u202E", "\u2066",
                             "\u2067", "\u2068", "\u2069"}) {
        const std::string text = std::string{"Slo"} + mark + "e";
        const auto control = find_control(text);
        REQUIRE(control);
        CHECK(control->turns_text);
        CHECK(control->at == 3);
        CHECK(with_controls_shown(text) == "Slo.e");
    }
    for (const char* mark : {"\u061B", "\u2010", "\u2029", "\u202F", "\u2065", "\u206A"})
        CHECK_FALSE(find_control(mark));
}
