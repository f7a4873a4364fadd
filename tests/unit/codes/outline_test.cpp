#include "codes/outline.h"

#include <catch2/catch.hpp>

#include <cstdlib>

using namespace dyeleaf;

namespace {

Code matrix(const std::vector<std::string>& rows) {
    Code code{CodeKind::qr, "", static_cast<int>(rows.front().size()), static_cast<int>(rows.size()), {}, {}};
    for (int y = 0; y < code.rows; ++y) {
        for (int x = 0; x < code.columns; ++x) {
            if (rows[static_cast<std::size_t>(y)][static_cast<std::size_t>(x)] == '#')
                code.dark.push_back({x, y, 1, 1});
        }
    }
    return code;
}

// In square modules; a white region within a dark one counts against it (Gauss's area formula).
int area(const std::vector<OutlineCorner>& outline) {
    int twice = 0;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const OutlineCorner& one = outline[i];
        const OutlineCorner& next = outline[(i + 1) % outline.size()];
        twice += one.x * next.y - next.x * one.y;
    }
    return twice / 2;
}

int area(const Code& code) {
    int all = 0;
    for (const auto& outline : outlines(code))
        all += area(outline);
    return all;
}

} // namespace

TEST_CASE("one module has four corners, and the dark lies within them", "[codes]") {
    const auto all = outlines(matrix({"#"}));
    REQUIRE(all.size() == 1);
    REQUIRE(all[0].size() == 4);
    for (const OutlineCorner& corner : all[0]) {
        CHECK(corner.inward_x == (corner.x == 0 ? 1 : -1));
        CHECK(corner.inward_y == (corner.y == 0 ? 1 : -1));
    }
}

TEST_CASE("an outline goes round holes the other way", "[codes]") {
    const auto all = outlines(matrix({"###", "# #", "###"}));
    REQUIRE(all.size() == 2);
    CHECK(area(all[0]) == 9);
    CHECK(area(all[1]) == -1);
    // Into the dark is out of the hole.
    for (const OutlineCorner& corner : all[1]) {
        CHECK(corner.inward_x == (corner.x == 1 ? -1 : 1));
        CHECK(corner.inward_y == (corner.y == 1 ? -1 : 1));
    }
}

TEST_CASE("modules that meet in a corner stay apart", "[codes]") {
    CHECK(outlines(matrix({"# ", " #"})).size() == 2);
    CHECK(outlines(matrix({" #", "# "})).size() == 2);
    CHECK(area(matrix({"## ", "## ", "  #"})) == 5);
}

TEST_CASE("outlines hold as much as the modules of a real code", "[codes]") {
    for (const char* text :
         {"26-117", "https://quillmoor.example/lot/26-117", "https://quillmoor.example/?lot=0077&of=12"}) {
        const Code code = std::get<Code>(make_code(CodeKind::qr, text));
        int dark = 0;
        for (const DarkModules& one : code.dark)
            dark += one.width * one.height;
        CHECK(dark > 100);
        CHECK(area(code) == dark);
    }
}
