// Boxes of speckles: as large as the layout makes them, and read aloud by their words.
#include "layout/measure.h"
#include "layout/place.h"
#include "project_folder.h"
#include "setting.h"

#include <catch2/catch.hpp>

using namespace dyeleaf;

namespace {

Speckled sloe() {
    Speckled speckled;
    speckled.dye_id = "sloe";
    speckled.spread = mm(2);
    speckled.density = per_square_centimetre(4);
    speckled.dye = Speckled::Dye::shown;
    speckled.description = "Sloe: Clean speckles";
    return speckled;
}

} // namespace

TEST_CASE("a box of speckles is as large as the layout makes it", "[layout]") {
    Box box;
    box.width = Extent::fixed(mm(27));
    box.min_height = mm(11);
    const Size wanted = wanted_size({SpeckleMark{sloe()}, &box}, mm(80), Trial{&typesetter(), 0});
    CHECK(near(wanted.width, mm(27)));
    CHECK(near(wanted.height, mm(11)));
}

TEST_CASE("a box of speckles is a figure with words, and a colour that nothing may cover", "[layout]") {
    Box box;
    const Placement placed = place({SpeckleMark{sloe()}, &box}, {mm(40), mm(20)}, {}, Trial{&typesetter(), 0});
    CHECK(reading_text(placed.list) == "Sloe: Clean speckles\n");
    CHECK(std::get<BeginTag>(placed.list.items.front()).tag.role == Tag::Role::figure);
    REQUIRE(placed.zones.size() == 1);
    CHECK(placed.zones[0].kind == Zone::Kind::colour);
    CHECK(placed.zones[0].rect == Rect{{}, {mm(40), mm(20)}});
    REQUIRE(placed.boxes.size() == 1);
    CHECK(placed.boxes[0].kind == "speckles");
}
