#include "sheets/trims.h"

#include <catch2/catch.hpp>

using namespace dyeleaf;

TEST_CASE("each label has its outline, and those alike in a row share one", "[sheets]") {
    const Trim tag{{mm(60), mm(90)}, false, {}, {}};
    const Trim lid{{mm(40), mm(40)}, true, {}, {}};
    Trims trims{{tag, tag, lid, lid, lid, tag}};
    REQUIRE(trims.size() == 6);
    CHECK(trims[1] == tag);
    CHECK(trims[2] == lid);
    CHECK(trims[4] == lid);
    CHECK(trims[5] == tag);
    CHECK(trims.kinds() == std::vector{tag, lid, tag});

    for (Trim& kind : trims.kinds())
        kind.bleed = mm(3);
    CHECK(trims[0].bleed == mm(3));
    CHECK(trims[5].bleed == mm(3));
    CHECK(Trims{}.empty());
}
