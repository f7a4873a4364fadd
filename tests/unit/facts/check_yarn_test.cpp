// What is warned of in a yarn's records.
#include "facts/check_yarn.h"

#include <catch2/catch.hpp>

using namespace dyeleaf;

namespace {

std::string complaint(const std::optional<std::string>& word, double mass, double length) {
    Base base;
    base.name = "Fell";
    base.yarn_weight = word;
    base.skein = {{grams(mass), grams(mass), {}}, {metres(length), metres(length), {}}};
    Diagnostics diagnostics;
    check_yarn_weight(base, diagnostics);
    if (diagnostics.sorted().empty()) return "";
    return diagnostics.sorted().front().message + " | " + diagnostics.sorted().front().help;
}

} // namespace

TEST_CASE("a length that does not go with the word is warned of", "[facts]") {
    CHECK(complaint("Aran", 100, 420) ==
          "“Aran” yarn usually has 120 to 200 m in 100 g, and Fell has 420 m | so much is usual for “super fine” "
          "(4-ply); look at the skein's weight and length and at the word again");
    CHECK(
        complaint("lace", 50, 115) ==
        "“lace” yarn usually has 600 m and more in 100 g, and Fell has 230 m | so much is usual for “light” (DK); look "
        "at the skein's weight and length and at the word again");
    CHECK(complaint("jumbo", 100, 150) ==
          "“jumbo” yarn usually has up to 100 m in 100 g, and Fell has 150 m | so much is usual for “medium” (aran); "
          "look at the skein's weight and length and at the word again");
}

TEST_CASE("what may be right is not warned of", "[facts]") {
    CHECK(complaint("super fine", 100, 420).empty());
    CHECK(complaint("super fine", 20, 84).empty());
    CHECK(complaint("DK", 115, 225).empty());
    CHECK(complaint("our own", 100, 5).empty());
    CHECK(complaint(std::nullopt, 100, 5).empty());
}
