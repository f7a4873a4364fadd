#include "cli/two_sides.h"

#include <catch2/catch.hpp>

using namespace dyeleaf;

namespace {

constexpr Size stands = {mm(210), mm(297)};
constexpr Size lies = {mm(297), mm(210)};

} // namespace

TEST_CASE("a sheet turns about the edge that was chosen", "[cli]") {
    // About its upright edge it turns like a page, about its lying one like a pad.
    struct Case {
        std::optional<Backs> backs;
        Size paper;
        Side side;
        bool short_edge;
    };
    const Case known = GENERATE(values<Case>({
        {{}, stands, Side::back, false},
        {{}, lies, Side::back, true},
        {Backs::long_edge, stands, Side::back, false},
        {Backs::long_edge, lies, Side::back_of_pad, false},
        {Backs::short_edge, stands, Side::back_of_pad, true},
        {Backs::short_edge, lies, Side::back, true},
        {Backs::by_hand, stands, Side::back, false},
        {Backs::by_hand_reversed, lies, Side::back, true},
    }));
    const Turning turn = turning(known.backs, known.paper);
    CHECK(turn.back == known.side);
    CHECK(turn.short_edge == known.short_edge);
}

TEST_CASE("the dyer is told how to turn", "[cli]") {
    CHECK(turning_words({}, stands, 3) == "flip on the long edge");
    CHECK(turning_words(Backs::short_edge, stands, 3) == "flip on the short edge");
    CHECK(turning_words(Backs::by_hand, stands, 3) ==
          "print pages 1 to 3, turn the pile over on its long edge, print pages 4 to 6");
    CHECK(turning_words(Backs::by_hand_reversed, lies, 1) ==
          "print page 1, turn the sheet over on its short edge, print page 2");
}
