// Lists in other colours.
#include "display/recolour.h"

#include <catch2/catch.hpp>

using namespace dyeleaf;

TEST_CASE("every ink is recoloured, in groups too, and nothing else", "[display]") {
    const Rgb red{1, 0, 0}, blue{0, 0, 1};
    const auto inner = std::make_shared<const DisplayList>(
        DisplayList{{mm(10), mm(10)}, {FillPath{{}, red}, BeginTag{}, StrokePath{{}, red, mm(1), {}}, EndTag{}}});
    Group group;
    group.list = inner;
    const DisplayList list{{mm(10), mm(10)}, {FillPath{{}, blue}, DrawPicture{}, group}};
    const DisplayList swapped = recoloured(list, [](Rgb colour) { return Rgb{colour.blue, colour.green, colour.red}; });
    REQUIRE(swapped.items.size() == 3);
    CHECK(std::get<FillPath>(swapped.items[0]).colour == red);
    const auto& within = std::get<Group>(swapped.items[2]).list->items;
    CHECK(std::get<FillPath>(within[0]).colour == blue);
    CHECK(std::get<StrokePath>(within[2]).colour == blue);
    CHECK(std::get<FillPath>(inner->items[0]).colour == red);
}
