#include "base/web_address.h"

#include <catch2/catch.hpp>

using namespace dyeleaf;

// RFC 3986, 2.1 to 2.5: unreserved characters stay, every other byte of UTF-8 is escaped; "あ" is its own example.
TEST_CASE("a text becomes a part of an address", "[base]") {
    CHECK(percent_encoded("26-117") == "26-117");
    CHECK(percent_encoded("A_z.0~9-") == "A_z.0~9-");
    CHECK(percent_encoded("26/117 b") == "26%2F117%20b");
    CHECK(percent_encoded("50%+?#&=:") == "50%25%2B%3F%23%26%3D%3A");
    CHECK(percent_encoded("été") == "%C3%A9t%C3%A9");
    CHECK(percent_encoded("あ") == "%E3%81%82");
    CHECK(percent_encoded("").empty());
}

TEST_CASE("web addresses have a scheme and a host", "[base]") {
    for (const char* text :
         {"https://quillmoor.example", "http://www.quillmoor.example/lot/", "https://a.example/?lot="})
        CHECK(is_web_address(text));
    for (const char* text : {"", "quillmoor.example/lot/", "ftp://quillmoor.example/", "https://quillmoor/",
                             "https://quillmoor.example/my lot/", "https://øl.example/", "https:///lot/"}) {
        INFO(text);
        CHECK_FALSE(is_web_address(text));
    }
}
