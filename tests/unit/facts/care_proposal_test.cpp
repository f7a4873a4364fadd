// The gentlest care that fibres ask for. Common practice throughout; ISO 3758 for the order.
#include "facts/care_proposal.h"
#include "studio_records.h"

#include <catch2/catch.hpp>

using namespace dyeleaf;

namespace {

using Fibres = std::vector<std::pair<std::string, double>>;

Base base_of(const Fibres& fibres, std::optional<Superwash> superwash) {
    Base base;
    for (const auto& [name, share] : fibres)
        base.fibres.push_back({name, percent(share)});
    base.superwash = superwash;
    return base;
}

} // namespace

TEST_CASE("the gentlest need among the fibres is proposed, superwash only for its own share", "[facts]") {
    const auto [fibres, superwash, wash, iron, because] =
        GENERATE(table<Fibres, std::optional<Superwash>, std::string, std::string, std::string>({
            {{{"wool", 100}}, std::nullopt, "hand wash", "iron medium", "wool that is not recorded as superwash"},
            {{{"wool", 100}}, false, "hand wash", "iron medium", "wool that is not superwash"},
            {{{"wool", 100}}, true, "wash 30 gentle", "iron medium", "wool"},
            {{{"merino", 75}, {"nylon", 25}}, true, "wash 30 gentle", "iron low", "wool"},
            {{{"wool", 75}, {"nylon", 25}}, percent(75), "wash 30 gentle", "iron low", "wool"},
            {{{"wool", 75}, {"nylon", 25}}, percent(50), "hand wash", "iron low", "wool that is not superwash"},
            {{{"wool", 50}, {"alpaca", 50}}, true, "hand wash", "iron low", "alpaca"},
            {{{"wool", 80}, {"yak", 20}}, true, "hand wash", "iron low", "yak"},
            {{{"wool", 80}, {"cashmere", 20}}, true, "hand wash", "iron low", "cashmere"},
            {{{"wool", 65}, {"silk", 35}}, true, "hand wash", "iron low", "silk"},
            {{{"cotton", 100}}, std::nullopt, "wash 30 gentle", "iron medium", "cotton"},
            {{{"cotton", 50}, {"kid mohair", 50}}, std::nullopt, "hand wash", "iron low", "mohair"},
        }));
    CAPTURE(because);
    const auto proposal = proposed_care(base_of(fibres, superwash));
    REQUIRE(proposal);
    REQUIRE(proposal->care.size() == 5);
    CHECK(proposal->care[0].key == wash);
    CHECK(proposal->care[1].key == "no bleach");
    CHECK(proposal->care[2].key == "no tumble");
    CHECK(proposal->care[3].key == "dry flat");
    CHECK(proposal->care[4].key == iron);
    CHECK(proposal->because == because);
}

TEST_CASE("nothing is proposed for what nobody knows", "[facts]") {
    CHECK_FALSE(proposed_care(base_of({{"wool", 90}, {"moonbeam", 10}}, true)));
    CHECK_FALSE(proposed_care(base_of({{"wool", 90}, {"other fibres", 10}}, true)));
    CHECK_FALSE(proposed_care(Base{}));
}

TEST_CASE("treatments of one thing can be harsher than each other", "[facts]") {
    const auto harsher = [](std::string_view one, std::string_view other) {
        return is_harsher(*find_care(one), *find_care(other));
    };
    CHECK(harsher("wash 30 gentle", "hand wash"));
    CHECK(harsher("wash 40", "wash 30 gentle"));
    CHECK(harsher("oxygen bleach", "no bleach"));
    CHECK(harsher("tumble low", "no tumble"));
    CHECK(harsher("iron medium", "iron low"));
    CHECK_FALSE(harsher("hand wash", "wash 30 gentle"));
    CHECK_FALSE(harsher("hand wash", "hand wash"));
    CHECK_FALSE(harsher("dry line", "dry flat"));
    CHECK_FALSE(harsher("iron high", "no bleach"));
    CHECK_FALSE(harsher("any bleach", "no wash"));
}

TEST_CASE("superwash is at most the wool there is", "[facts]") {
    CHECK(superwash_share(base_of({{"merino", 75}, {"nylon", 25}}, true)) == percent(75));
    CHECK(superwash_share(base_of({{"merino", 75}, {"nylon", 25}}, percent(80))) == percent(75));
    CHECK(superwash_share(base_of({{"wool", 50}, {"merino", 50}}, percent(50))) == percent(50));
    CHECK(superwash_share(base_of({{"wool", 100}}, false)) == Percent{});
    CHECK(superwash_share(base_of({{"SW merino", 60}, {"wool", 40}}, std::nullopt)) == percent(60));
    CHECK(superwash_share(base_of({{"superwash merino", 100}}, false)) == Percent{});
    CHECK_FALSE(superwash_share(base_of({{"non-superwash wool", 100}}, std::nullopt)));
    CHECK_FALSE(superwash_share(base_of({{"wool", 100}}, std::nullopt)));
}
