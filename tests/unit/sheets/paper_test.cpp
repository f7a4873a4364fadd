#include "sheets/stock.h"

#include <catch2/catch.hpp>

using namespace dyeleaf;

namespace {

struct Known {
    std::string name;
    Size size;
};

} // namespace

TEST_CASE("paper has the sizes of its standard", "[sheets]") {
    const Known known = GENERATE(values<Known>({
        // ISO 216, main series A.
        {"A3", {mm(297), mm(420)}},
        {"A4", {mm(210), mm(297)}},
        {"A5", {mm(148), mm(210)}},
        {"A6", {mm(105), mm(148)}},
        {"A7", {mm(74), mm(105)}},
        {"A8", {mm(52), mm(74)}},
        // ISO 217.
        {"SRA3", {mm(320), mm(450)}},
        {"SRA4", {mm(225), mm(320)}},
        // ANSI/ASME Y14.1, in millimetres.
        {"Letter", {mm(215.9), mm(279.4)}},
        {"half-letter", {mm(139.7), mm(215.9)}},
        {"Legal", {mm(215.9), mm(355.6)}},
        // ISO/IEC 7810.
        {"ID-1", {mm(85.60), mm(53.98)}},
    }));
    CAPTURE(known.name);
    const auto size = find_paper(known.name);
    REQUIRE(size);
    CHECK(near(size->width, known.size.width));
    CHECK(near(size->height, known.size.height));
}

TEST_CASE("paper is found in any case of letters, and only by a whole name", "[sheets]") {
    CHECK(find_paper("a4") == find_paper("A4"));
    CHECK(find_paper("LETTER") == find_paper("Letter"));
    CHECK_FALSE(find_paper("A"));
    CHECK_FALSE(find_paper("A44"));
    CHECK_FALSE(find_paper(""));
}

TEST_CASE("every paper that is named can be found", "[sheets]") {
    for (const std::string& name : paper_names())
        CHECK(find_paper(name));
}
