#include "speckles/random.h"

#include <catch2/catch.hpp>

using namespace dyeleaf;

// The first five numbers of the authors' own splitmix64.c from the seed 1234567, as they are published at Rosetta Code,
// “Pseudo-random numbers/Splitmix64”.
TEST_CASE("the generator is SplitMix64", "[speckles]") {
    Random random{1234567};
    for (const std::uint64_t expected : {6457827717110365317U, 3203168211198807973U, 9817491932198370423U,
                                         4593380528125082431U, 16408922859458223821U})
        CHECK(random.next() == expected);
}

TEST_CASE("a share is below 1 and spread evenly", "[speckles]") {
    Random random{7};
    double sum = 0;
    for (int i = 0; i < 10000; ++i) {
        const double share = random.share();
        REQUIRE(share >= 0);
        REQUIRE(share < 1);
        sum += share;
    }
    CHECK(sum / 10000 == Approx(0.5).margin(0.01)); // three and a half standard errors
}
