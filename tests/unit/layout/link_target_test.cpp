#include "layout/link_target.h"

#include <catch2/catch.hpp>

using namespace dyeleaf;

TEST_CASE("a line that is an address leads there, and no other line does", "[layout]") {
    CHECK(link_target("wool@quillmoor.example") == "mailto:wool@quillmoor.example");
    CHECK(link_target(" quillmoor.example/shop ") == "https://quillmoor.example/shop");
    CHECK(link_target("www.quillmoor.example") == "https://www.quillmoor.example");
    CHECK(link_target("http://quillmoor.example/a?b=1") == "http://quillmoor.example/a?b=1");
    for (const char* text : {"", "The old pump house, Quillmoor", "Lot 26-117", "26.00", "2.25", "F-412", "@quillmoor",
                             "wool@quillmoor", "Merino.Silk", "100 g", "a..example", "https://", "€26.00", "e.g.",
                             "write to wool@quillmoor.example", "+353.1.55", "Øl.dk"}) {
        INFO(text);
        CHECK(link_target(text).empty());
    }
}
