// Care treatments.
#include "records/care.h"

#include <catch2/catch.hpp>

#include <algorithm>
#include <set>

using namespace dyeleaf;

TEST_CASE("treatments stand in the order of ISO 3758 since 2012", "[records]") {
    const auto& all = care_treatments();
    CHECK(std::ranges::is_sorted(all, {}, &Care::process));
    CHECK(all.front().process == CareProcess::wash);
    CHECK(all.back().process == CareProcess::professional);
    std::set<std::string_view> keys;
    for (const Care& care : all) {
        CHECK(keys.insert(care.key).second);
        CHECK_FALSE(care.words.empty());
    }
    CHECK(all.size() == 43); // the variants of ISO 3758:2012, with the two that are new in 2023
}

TEST_CASE("treatments are found by their key", "[records]") {
    CHECK(find_care("wash 30 gentle")->words == "Wash 30 °C, gentle");
    CHECK(find_care("no bleach")->words == "Do not bleach");
    CHECK(find_care("no tumble")->words == "Do not tumble dry");
    CHECK(find_care("iron low")->words == "Iron low");
    CHECK(find_care("dry clean p")->key == "dry clean P");
    CHECK_FALSE(find_care("machine wash"));
}

TEST_CASE("some treatments shut each other out", "[records]") {
    const auto clash = [](std::string_view one, std::string_view other) {
        return contradict(*find_care(one), *find_care(other)) && contradict(*find_care(other), *find_care(one));
    };
    CHECK(clash("wash 30", "wash 40"));
    CHECK(clash("hand wash", "no wash"));
    CHECK(clash("tumble low", "no tumble"));
    CHECK(clash("dry flat", "dry line shade"));
    CHECK(clash("no iron", "iron no steam"));
    CHECK(clash("dry clean P", "no dry clean"));
    CHECK(clash("no wash", "tumble low"));
    CHECK(clash("oxygen bleach", "no wash"));
    CHECK_FALSE(clash("no wash", "wet clean")); // not at home, but by one who knows how
    CHECK_FALSE(clash("no wash", "no tumble"));
    CHECK_FALSE(clash("no tumble", "dry flat"));
    CHECK_FALSE(clash("iron low", "iron no steam"));
    CHECK_FALSE(clash("dry clean P", "wet clean gentle"));
    CHECK_FALSE(clash("no wash", "no bleach"));
}

TEST_CASE("what a list of treatments leaves out is told in printing order", "[records]") {
    using enum CareProcess;
    CHECK(processes_left_out({*find_care("no iron"), *find_care("hand wash")}) ==
          std::vector{bleach, dry, professional});
    CHECK(processes_left_out({}).size() == 5);
    const std::vector whole = {*find_care("hand wash"), *find_care("no bleach"), *find_care("no tumble"),
                               *find_care("no iron"), *find_care("no wet clean")};
    CHECK(processes_left_out(whole).empty());
}
