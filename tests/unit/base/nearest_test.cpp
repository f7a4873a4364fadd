// The word that was meant.
#include "base/nearest.h"

#include <catch2/catch.hpp>

using namespace dyeleaf;

TEST_CASE("the distance counts letters put in, left out, changed and swapped", "[base]") {
    CHECK(edit_distance("sloe", "sloe") == 0);
    CHECK(edit_distance("sloe", "slo") == 1);
    CHECK(edit_distance("sloe", "slope") == 1);
    CHECK(edit_distance("sloe", "slow") == 1);
    CHECK(edit_distance("sloe", "sleo") == 1); // optimal string alignment: a swap is one step
    CHECK(edit_distance("", "sloe") == 4);
    CHECK(edit_distance("kitten", "sitting") == 3);
    CHECK(edit_distance("ca", "abc") == 3); // unrestricted Damerau-Levenshtein would say 2
}

TEST_CASE("a near word is found whatever its case, a far one is not", "[base]") {
    const std::vector<std::string> words = {"sloe", "haw", "rosehip"};
    CHECK(nearest("Slo", words) == "sloe");
    CHECK(nearest("rose hip", words) == "rosehip");
    CHECK_FALSE(nearest("gorse", words));
    CHECK_FALSE(nearest("", {}));
}

TEST_CASE("a suggestion names the near word or all there are", "[base]") {
    CHECK(suggest("hwa", {"sloe", "haw"}) == "did you mean “haw”?");
    CHECK(suggest("gorse", {"sloe", "haw"}) == "known here: sloe, haw");
    CHECK(suggest("gorse", {}) == "there are none yet");
    std::vector<std::string> many;
    for (int i = 0; i < 15; ++i)
        many.push_back("dye-" + std::to_string(i));
    CHECK(suggest("x", many).ends_with("dye-11 and 3 more"));
}
