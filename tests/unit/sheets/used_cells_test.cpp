#include "sheets/used_cells.h"

#include <catch2/catch.hpp>

using namespace dyeleaf;

TEST_CASE("cells are read one by one and in ranges", "[sheets]") {
    CHECK(parse_cells("7") == std::set<int>{7});
    CHECK(parse_cells("1-4,7,12") == std::set<int>{1, 2, 3, 4, 7, 12});
    CHECK(parse_cells("12, 3 - 3, 7") == std::set<int>{3, 7, 12});
    CHECK(parse_cells("2-4,3-5") == std::set<int>{2, 3, 4, 5});
    CHECK(parse_cells("999") == std::set<int>{999});
}

TEST_CASE("what is no list of cells is nothing", "[sheets]") {
    for (const char* text : {"", ",", "1,", ",1", "0", "0-3", "4-1", "-3", "3-", "1--3", "1-2-3", "a", "1 2", "1000",
                             "1-1000", "1.5", "1;2"}) {
        CAPTURE(text);
        CHECK_FALSE(parse_cells(text));
    }
}

TEST_CASE("cells are written the shortest way", "[sheets]") {
    CHECK(cell_list({}).empty());
    CHECK(cell_list({7}) == "7");
    CHECK(cell_list({1, 2, 3, 4, 7, 12, 13}) == "1-4,7,12-13");
    CHECK(cell_list(*parse_cells("3,1,2")) == "1-3");
}
