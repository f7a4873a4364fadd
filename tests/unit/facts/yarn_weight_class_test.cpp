// The dyer's words for a yarn's thickness, and the yarn weights of the Craft Yarn Council.
#include "facts/yarn_weight_class.h"

#include <catch2/catch.hpp>

using namespace dyeleaf;

namespace {

int class_of(std::string_view words) {
    const auto found = find_yarn_weight_class(words);
    return found ? found->number : -1;
}

} // namespace

// Craft Yarn Council, Standard Yarn Weight System: names and types of yarn. Plies as in Britain and Australia.
TEST_CASE("words for thickness", "[facts]") {
    const auto [words, number] = GENERATE(table<const char*, int>({
        {"lace", 0},
        {"Laceweight", 0},
        {"2-ply", 0},
        {"super fine", 1},
        {"Super Fine", 1},
        {"superfine", 1},
        {"4-ply", 1},
        {"4ply", 1},
        {"4 ply / fingering", 1},
        {"fingering", 1},
        {"Sock", 1},
        {"fingering weight (4-ply)", 1},
        {"fine", 2},
        {"Sport", 2},
        {"5-ply", 2},
        {"light", 3},
        {"DK", 3},
        {"dk/8-ply", 3},
        {"light worsted", 3},
        {"double knitting", 3},
        {"light (DK)", 3},
        {"medium", 4},
        {"Worsted", 4},
        {"aran", 4},
        {"worsted/aran", 4},
        {"10-ply", 4},
        {"afghan", 4},
        {"bulky", 5},
        {"chunky", 5},
        {"12-ply", 5},
        {"super bulky", 6},
        {"super chunky", 6},
        {"jumbo", 7},
    }));
    INFO(words);
    CHECK(class_of(words) == number);
}

TEST_CASE("words that say nothing sure about thickness", "[facts]") {
    // Unknown ones, those that the council has in two classes, and those that disagree.
    for (const char* words : {"", "baby", "roving", "single", "1-ply", "mèche", "4-ply worsted", "light fingering",
                              "fine aran", "finely spun", "supersport", "14-ply"}) {
        INFO(words);
        CHECK(class_of(words) == -1);
    }
}

// Craft Yarn Council: 27 to 32 stitches, 2.25 to 3.25 mm; 6 stitches and fewer, 12.75 mm and larger.
TEST_CASE("the guidelines of a class", "[facts]") {
    const auto sock = find_yarn_weight_class("sock").value();
    CHECK(sock.name == "super fine");
    CHECK(sock.stitches.least == 27);
    CHECK(sock.stitches.most == 32);
    CHECK(sock.needles.least == mm(2.25));
    CHECK(sock.needles.most == mm(3.25));
    CHECK(sock.hooks.most == mm(3.5));
    const auto jumbo = find_yarn_weight_class("jumbo").value();
    CHECK_FALSE(jumbo.stitches.least);
    CHECK(jumbo.needles.least == mm(12.75));
    CHECK_FALSE(jumbo.needles.most);
}

// What yarn shops print: lace from 600 m in 100 g, 4-ply 350 to 450, sport 250 to 350, DK 200 to 250, aran 120 to 200,
// chunky 100 to 130; a tenth is let pass.
TEST_CASE("lengths that go with a word", "[facts]") {
    const auto usual = [](double length, const char* words) {
        return is_usual(metres(length), find_yarn_weight_class(words).value());
    };
    CHECK(usual(800, "lace"));
    CHECK(usual(1200, "lace"));
    CHECK(usual(366, "fingering"));
    CHECK(usual(425, "4-ply"));
    CHECK(usual(490, "4-ply"));
    CHECK(usual(230, "DK"));
    CHECK(usual(115, "chunky"));
    CHECK(usual(40, "jumbo"));
    CHECK_FALSE(usual(420, "lace"));
    CHECK_FALSE(usual(230, "4-ply"));
    CHECK_FALSE(usual(420, "DK"));
    CHECK_FALSE(usual(230, "aran"));
    CHECK_FALSE(usual(200, "chunky"));
    CHECK_FALSE(usual(160, "super bulky"));
}

TEST_CASE("the class that a length points to", "[facts]") {
    const auto [length, number] = GENERATE(table<double, int>(
        {{1500, 0}, {800, 0}, {540, 0}, {500, 1}, {400, 1}, {300, 2}, {220, 3}, {160, 4}, {115, 5}, {60, 6}}));
    INFO(length);
    CHECK(yarn_weight_class_of(metres(length)).number == number);
}
