#include "sheets/impose.h"
#include "sheets/pouch.h"
#include "sheets/used_cells.h"

#include <catch2/catch.hpp>
#include <cmath>

using namespace dyeleaf;

namespace {

Stock card(std::string paper = "A4") {
    Stock stock;
    stock.name = "card";
    stock.paper = *find_paper(paper);
    stock.margin = mm(6);
    stock.gap = mm(6);
    return stock;
}

// 3 × 7 cells of 60 × 38 mm.
Stock cells() {
    Stock stock;
    stock.name = "cells";
    stock.paper = *find_paper("A4");
    stock.margin = mm(5);
    stock.cells = CellGrid{3, 7, {mm(60), mm(38)}, false, {mm(10), mm(15)}, mm(65), mm(38)};
    return stock;
}

std::vector<Trim> labels(std::size_t count, double width, double height) {
    return std::vector<Trim>(count, Trim{{mm(width), mm(height)}, false, {}, {}});
}

struct Planned {
    std::vector<SheetPlan> sheets;
    Diagnostics diagnostics;
    [[nodiscard]] std::vector<std::size_t> counts() const {
        std::vector<std::size_t> result;
        for (const SheetPlan& sheet : sheets)
            result.push_back(sheet.slots.size());
        return result;
    }
    [[nodiscard]] std::vector<std::size_t> order() const {
        std::vector<std::size_t> result;
        for (const SheetPlan& sheet : sheets) {
            for (const Slot& slot : sheet.slots)
                result.push_back(slot.label);
        }
        return result;
    }
    [[nodiscard]] std::string message() const {
        const auto sorted = diagnostics.sorted();
        return sorted.empty() ? std::string{} : sorted.front().message;
    }
};

Planned plan(const std::vector<Trim>& labels, const Stock& stock, ImposeOptions options = {}) {
    Planned planned;
    planned.sheets = plan_sheets(labels, stock, options, {}, planned.diagnostics);
    return planned;
}

using Counts = std::vector<std::size_t>;

} // namespace

TEST_CASE("plain card is turned when that takes fewer sheets", "[sheets]") {
    // Upright 3 × 1 strips of 50 × 150 mm lie on A4, on its side 5 × 1.
    const Planned planned = plan(labels(5, 50, 150), card());
    CHECK(planned.counts() == Counts{5});
    CHECK(planned.sheets[0].paper == Size{mm(297), mm(210)});
}

TEST_CASE("plain card stays upright when turning gains nothing", "[sheets]") {
    const Planned planned = plan(labels(3, 50, 150), card());
    CHECK(planned.counts() == Counts{3});
    CHECK(planned.sheets[0].paper == Size{mm(210), mm(297)});
}

TEST_CASE("plain card that may not be turned is not turned", "[sheets]") {
    Stock stock = card();
    stock.may_turn = false;
    CHECK(plan(labels(5, 50, 150), stock).counts() == Counts{3, 2});
}

TEST_CASE("cards of 85 × 55 mm: nine on A4 or US Letter on its side, eight upright", "[sheets]") {
    const std::string paper = GENERATE("A4", "Letter");
    // On its side 3 × 85 + 2 × 6 = 267 of 285 (Letter 267.4) mm across, 3 × 55 + 2 × 6 = 177 of 189 (194.9) mm down;
    // upright 2 × 85 + 6 = 176 of 198 mm, 4 × 55 + 3 × 6 = 238 of 276 (258.4) mm.
    Stock stock = card(paper);
    CHECK(plan(labels(18, 85, 55), stock).counts() == Counts{9, 9});
    stock.may_turn = false;
    CHECK(plan(labels(18, 85, 55), stock).counts() == Counts{8, 8, 2});
}

TEST_CASE("labels on plain card keep their gap, and clear of margin and test line", "[sheets]") {
    const std::vector<Trim> wanted = labels(30, 40, 30);
    const Planned planned = plan(wanted, card());
    REQUIRE_FALSE(planned.sheets.empty());
    for (const SheetPlan& sheet : planned.sheets) {
        const Rect room = shrunk({{}, sheet.paper}, {mm(6), mm(6), mm(15), mm(6)});
        for (std::size_t i = 0; i < sheet.slots.size(); ++i) {
            const Rect place = {sheet.slots[i].origin, wanted[sheet.slots[i].label].size};
            CHECK(contains(room, place));
            for (std::size_t j = 0; j < i; ++j)
                CHECK_FALSE(overlap(grown(place, mm(3)), grown({sheet.slots[j].origin, place.size}, mm(3))));
        }
    }
}

TEST_CASE("the block of labels is centred from left to right, alike on every sheet", "[sheets]") {
    Stock stock = card();
    stock.may_turn = false;
    const Planned planned = plan(labels(9, 85, 55), stock);
    REQUIRE(planned.counts() == Counts{8, 1});
    const Length left = planned.sheets[0].slots[0].origin.x;
    CHECK(near(left, (mm(210) - mm(176)) / 2));
    CHECK(near(planned.sheets[1].slots[0].origin.x, left));
    CHECK(near(planned.sheets[1].slots[0].origin.y, planned.sheets[0].slots[0].origin.y));
}

TEST_CASE("labels of different sizes follow one another in rows", "[sheets]") {
    std::vector<Trim> wanted = labels(1, 120, 30);
    wanted.push_back({{mm(60), mm(50)}, false, {}, {}});
    wanted.push_back({{mm(100), mm(20)}, false, {}, {}});
    Stock stock = card();
    stock.may_turn = false;
    const Planned planned = plan(wanted, stock);
    REQUIRE(planned.counts() == Counts{3});
    const auto& slots = planned.sheets[0].slots;
    CHECK(near(slots[1].origin.x, slots[0].origin.x + mm(126)));
    CHECK(near(slots[1].origin.y, slots[0].origin.y));
    CHECK(near(slots[2].origin.x, slots[0].origin.x));
    CHECK(near(slots[2].origin.y, slots[0].origin.y + mm(56))); // below the taller of the two
}

TEST_CASE("a label that just fits plain card fits, and one that is larger does not", "[sheets]") {
    Stock stock = card();
    stock.may_turn = false;
    CHECK(plan(labels(1, 198, 276), stock).counts() == Counts{1});

    const Planned planned = plan(labels(2, 198, 276.1), stock);
    CHECK(planned.sheets.empty());
    CHECK(planned.diagnostics.errors() == 1);
    CHECK(planned.message() == "the label is 198 × 276.1 mm; “card” takes at most 198 × 276 mm");
}

TEST_CASE("a label as large as the paper is refused with the largest that fits either way", "[sheets]") {
    CHECK(plan(labels(1, 210, 297), card()).message() ==
          "the label is 210 × 297 mm; “card” takes at most 198 × 276 mm, or 285 × 189 mm with the sheet turned");
}

TEST_CASE("labels that need the sheet both ways are refused", "[sheets]") {
    std::vector<Trim> wanted = labels(1, 100, 270);
    wanted.push_back({{mm(270), mm(100)}, false, {}, {}});
    CHECK_THAT(plan(wanted, card()).message(), Catch::Contains("only with the sheet upright"));
}

TEST_CASE("copies of one label follow one another", "[sheets]") {
    const Planned planned = plan(labels(2, 85, 55), card(), {{3, 3}, {}});
    REQUIRE(planned.counts() == Counts{6});
    Counts order;
    for (const Slot& slot : planned.sheets[0].slots)
        order.push_back(slot.label);
    CHECK(order == Counts{0, 0, 0, 1, 1, 1});
}

TEST_CASE("no labels need no sheets", "[sheets]") {
    CHECK(plan({}, card()).sheets.empty());
    CHECK(plan({}, cells(), {{}, {1, 2, 3, 4}}).diagnostics.errors() == 0);
}

TEST_CASE("cells are filled row by row, after those already used", "[sheets]") {
    const Planned planned = plan(labels(20, 60, 38), cells(), {{}, {1, 2, 3, 4}});
    REQUIRE(planned.counts() == Counts{17, 3});
    CHECK(near(planned.sheets[0].slots[0].origin.x, mm(10 + 65)));
    CHECK(near(planned.sheets[0].slots[0].origin.y, mm(15 + 38)));
    CHECK(near(planned.sheets[1].slots[0].origin.x, mm(10)));
    CHECK(near(planned.sheets[1].slots[0].origin.y, mm(15)));
}

TEST_CASE("used cells lie anywhere on the first sheet", "[sheets]") {
    const Planned planned = plan(labels(20, 60, 38), cells(), {{}, {1, 2, 3, 4, 7, 12}});
    REQUIRE(planned.counts() == Counts{15, 5});
    std::vector<int> numbers;
    for (const Slot& slot : planned.sheets[0].slots)
        numbers.push_back(slot.number);
    CHECK(numbers == std::vector<int>{5, 6, 8, 9, 10, 11, 13, 14, 15, 16, 17, 18, 19, 20, 21});
    CHECK(near(planned.sheets[0].slots[2].origin.x, mm(10 + 65))); // cell 8: the second of the third row
    CHECK(near(planned.sheets[0].slots[2].origin.y, mm(15 + 2 * 38)));
    CHECK(planned.sheets[1].slots[0].number == 1);
}

TEST_CASE("the last cell of a sheet may be the first that is free", "[sheets]") {
    CHECK(plan(labels(2, 60, 38), cells(), {{}, *parse_cells("1-20")}).counts() == Counts{1, 1});
}

TEST_CASE("a used cell past the last one is refused, and a sheet that is used up", "[sheets]") {
    const Planned past = plan(labels(1, 60, 38), cells(), {{}, {3, 22}});
    CHECK(past.sheets.empty());
    CHECK(past.message() == "there is no cell 22: “cells” has 21 cells");
    const Planned full = plan(labels(1, 60, 38), cells(), {{}, *parse_cells("1-21")});
    CHECK(full.sheets.empty());
    CHECK(full.message() == "all 21 cells of the first sheet are used up, by what --used and --skip say");
}

TEST_CASE("used cells are refused where there are no cells", "[sheets]") {
    CHECK(plan(labels(1, 60, 38), card(), {{}, {3}}).message() ==
          "--used and --skip count ready-cut cells, and “card” has none");
}

TEST_CASE("each label has its own number of copies", "[sheets]") {
    CHECK(plan(labels(3, 85, 55), card(), {{1, 4, 2}, {}}).order() == Counts{0, 1, 1, 1, 1, 2, 2});
}

TEST_CASE("in piles each place holds consecutive labels down through the sheets", "[sheets]") {
    // Eight on a sheet, 22 in all: places 1 to 6 lie three deep, places 7 and 8 two deep.
    const Planned planned = plan(labels(22, 85, 55), card(), {{}, {}, true});
    REQUIRE(planned.counts() == Counts{8, 8, 6});
    CHECK(planned.order() == Counts{0, 3, 6, 9,  12, 15, 18, 20, //
                                    1, 4, 7, 10, 13, 16, 19, 21, //
                                    2, 5, 8, 11, 14, 17});
    for (const SheetPlan& sheet : planned.sheets) {
        for (std::size_t i = 0; i < sheet.slots.size(); ++i)
            CHECK(sheet.slots[i].origin == planned.sheets[0].slots[i].origin); // one cut through all
    }
}

TEST_CASE("a pile under a used cell begins on the second sheet", "[sheets]") {
    const Planned planned = plan(labels(40, 60, 38), cells(), {{}, {1, 2}, true});
    REQUIRE(planned.counts() == Counts{19, 21});
    CHECK(planned.sheets[1].slots[0].label == 0);
    CHECK(planned.sheets[1].slots[1].label == 1);
    CHECK(planned.sheets[0].slots[0].label == 2);
    CHECK(planned.sheets[1].slots[2].label == 3);
}

TEST_CASE("labels of different sizes are no pile", "[sheets]") {
    std::vector<Trim> wanted = labels(1, 60, 30);
    wanted.push_back({{mm(50), mm(30)}, false, {}, {}});
    CHECK(plan(wanted, card(), {{}, {}, true}).message() == "labels of different sizes cannot be cut as one pile");
}

TEST_CASE("a label within half a millimetre of the cell is centred in it", "[sheets]") {
    const Planned planned = plan(labels(1, 59.6, 38.4), cells());
    REQUIRE(planned.counts() == Counts{1});
    CHECK(near(planned.sheets[0].slots[0].origin.x, mm(10.2)));
    CHECK(near(planned.sheets[0].slots[0].origin.y, mm(14.8)));
}

TEST_CASE("a label of another size or shape than the cell is refused with both", "[sheets]") {
    CHECK(plan(labels(1, 60.6, 38), cells()).message() ==
          "the label is 60.6 × 38 mm, but the cells of the stock “cells” are 60 × 38 mm: it is 0.6 mm too wide");
    CHECK(
        plan(labels(1, 61, 40), cells()).message() ==
        "the label is 61 × 40 mm, but the cells of the stock “cells” are 60 × 38 mm: it is 1 mm too wide and 2 mm too "
        "high");
    Stock round = cells();
    round.cells->cell = {mm(38), mm(38)};
    round.cells->round = true;
    CHECK(plan(labels(1, 38, 38), round).message() == "the label is 38 × 38 mm, but the cells of the stock “cells” are "
                                                      "38 mm round: its corners, 53.74 mm apart, would "
                                                      "be cut off"); // 38 × √2
    CHECK_THAT(plan(labels(1, 20, 20), round).message(),
               Catch::Contains("it would come off the sheet without corners"));
    const std::vector<Trim> lid = {{{mm(38), mm(38)}, true, {}, {}}};
    CHECK(plan(lid, round).counts() == Counts{1});
    CHECK(plan(lid, cells()).message() ==
          "the label is 38 mm round, but the cells of the stock “cells” are 60 × 38 mm: "
          "it would come off the sheet with corners");
}

TEST_CASE("a round label goes into an oval cell that is as wide and as high", "[sheets]") {
    Stock oval = cells();
    oval.cells->round = true;
    CHECK(plan({{{mm(60), mm(38)}, true, {}, {}}}, oval).counts() == Counts{1});
    CHECK(plan({{{mm(38), mm(38)}, true, {}, {}}}, oval).counts() == Counts{1});
    CHECK(plan({{{mm(60), mm(60)}, true, {}, {}}}, oval).message() ==
          "the label is 60 mm round, but the cells of the stock “cells” are 60 × 38 mm oval: it is 22 mm too high");
}

TEST_CASE("a rounded cell takes a label that is as round at its corners, or far enough inside", "[sheets]") {
    Stock rounded = cells();
    rounded.cells->corner = mm(4);
    const auto label = [](double width, double height, double corner) {
        return std::vector<Trim>{{{mm(width), mm(height)}, false, mm(corner), {}}};
    };
    CHECK(plan(label(60, 38, 4), rounded).counts() == Counts{1});
    CHECK(plan(label(60, 38, 5), rounded).counts() == Counts{1});
    // A square corner of the same size sticks out of a quarter circle by its radius times √2 - 1.
    CHECK(plan(label(60, 38, 0), rounded).message() == "the label is 60 × 38 mm with square corners, but the cells of "
                                                       "the stock “cells” are 60 × 38 mm with corners of "
                                                       "4 mm: 1.66 mm of each corner would be cut off");
    CHECK(
        plan(label(60, 38, 2), rounded).message() ==
        "the label is 60 × 38 mm with corners of 2 mm, but the cells of the stock “cells” are 60 × 38 mm with corners "
        "of 4 mm: 0.83 mm of each corner would be cut off");
    // 4 mm × (1 - 1/√2) = 1.17 mm inside on every side the square corner touches the circle.
    CHECK(plan(label(60 - 2 * 1.18, 38 - 2 * 1.18, 0), rounded).counts() == Counts{1});
    CHECK(plan(label(60, 38 - 8, 0), rounded).counts() == Counts{1}); // between the corners
}

TEST_CASE("a complaint about some of the labels names their records", "[sheets]") {
    std::vector<Trim> wanted = labels(1, 60, 38);
    wanted.insert(wanted.end(), 2, {{mm(80), mm(38)}, false, {}, {}});
    const auto name = [](std::size_t label) { return std::vector<std::string>{"sloe", "haw", "rosehip"}.at(label); };
    CHECK(plan(wanted, cells(), {{}, {}, false, name}).message() ==
          "“haw” and 1 other: the label is 80 × 38 mm, but the cells of the stock “cells” are 60 × 38 mm: it is 20 mm "
          "too "
          "wide");
    wanted = labels(1, 60, 38);
    wanted.push_back({{mm(300), mm(38)}, false, {}, {}});
    CHECK_THAT(plan(wanted, card(), {{}, {}, false, name}).message(),
               Catch::StartsWith("“haw”: the label is 300 × 38 mm; “card” takes at most"));
}

TEST_CASE("with single cuts labels touch, and leave room for the marks at the sheet's edges", "[sheets]") {
    Stock stock = card();
    stock.cut = Cut::single_cuts;
    stock.gap = {};
    stock.may_turn = false;
    // 198 - 2 × 6 = 186 mm across, 276 - 2 × 6 = 264 mm down.
    const Planned planned = plan(labels(9, 90, 60), stock);
    REQUIRE(planned.counts() == Counts{8, 1});
    CHECK(near(planned.sheets[0].slots[1].origin.x, planned.sheets[0].slots[0].origin.x + mm(90)));
    CHECK(near(planned.sheets[0].slots[2].origin.y, planned.sheets[0].slots[0].origin.y + mm(60)));
    CHECK(fits(mm(12), planned.sheets[0].slots[0].origin.y));
    CHECK(planned.diagnostics.warnings() == 0);
}

TEST_CASE("labels that cannot share a cut are refused, and those whose colours meet are warned of", "[sheets]") {
    Stock stock = card();
    stock.cut = Cut::single_cuts;
    stock.gap = {};
    std::vector<Trim> two = labels(1, 60, 40);
    two.push_back({{mm(60), mm(50)}, false, {}, {}});
    CHECK(plan(two, stock).message() ==
          "labels of different sizes cannot share their cuts, and “card” has single cuts");
    CHECK(plan({{{mm(38), mm(38)}, true, {}, {}}}, stock).message() ==
          "round labels cannot share a cut, and “card” has single cuts");
    std::vector<Trim> bent = labels(2, 60, 40);
    bent[1].sector = Sector{mm(80), mm(120), 0.5, true};
    CHECK(plan(bent, stock).message() ==
          "labels that are cut along an arc cannot share a cut, and “card” has single cuts");
    const Planned bleeding = plan({{{mm(60), mm(40)}, false, {}, mm(3)}}, stock);
    CHECK(bleeding.counts() == Counts{1});
    CHECK(
        bleeding.message() ==
        "these labels have colour that runs past their edges, and “card” has one cut between neighbours: a knife that "
        "strays leaves a rim of the neighbour's colour");
}

namespace {

Stock roll(double width, std::optional<Length> length = {}) {
    Stock stock;
    stock.name = "roll";
    stock.page_per_label = true;
    stock.roll = Roll{mm(width), length};
    return stock;
}

} // namespace

TEST_CASE("a page of a roll is as wide as the roll and as long as its label and the gap", "[sheets]") {
    Stock stock = roll(62);
    stock.gap = mm(4);
    const Planned planned = plan(labels(1, 50, 90), stock, {{2}, {}});
    REQUIRE(planned.counts() == Counts{1, 1});
    CHECK(planned.sheets[0].paper == Size{mm(62), mm(94)});
    CHECK(planned.sheets[0].slots[0].origin == Point{mm(6), mm(2)});
    CHECK(planned.sheets[0].slots[0].turn == Turn::none);
}

TEST_CASE("a label too wide for the roll lies along it", "[sheets]") {
    const Planned planned = plan(labels(1, 90, 50), roll(62));
    REQUIRE(planned.counts() == Counts{1});
    CHECK(planned.sheets[0].paper == Size{mm(62), mm(90)});
    CHECK(planned.sheets[0].slots[0].origin == Point{mm(6), mm(0)});
    CHECK(planned.sheets[0].slots[0].turn == Turn::right);
    Stock upright = roll(62);
    upright.may_turn = false;
    CHECK(plan(labels(1, 90, 50), upright).message() == "the label is 90 × 50 mm; the roll “roll” takes 62 mm across");
}

TEST_CASE("a label that fits a roll neither way is refused with what the roll takes", "[sheets]") {
    Stock stock = roll(62);
    stock.margin = mm(1.5);
    CHECK(plan(labels(1, 59, 200), stock).counts() == Counts{1});
    CHECK(
        plan(labels(1, 60, 90), stock).message() ==
        "the label is 60 × 90 mm; the roll “roll” takes 62 − 2 × 1.5 = 59 mm across, and the label does not fit either "
        "way round");
    CHECK(
        plan(labels(1, 60, 160), roll(100, mm(150))).message() ==
        "the label is 60 × 160 mm; the roll “roll” takes 100 mm across and 150 mm along it, and the label does not fit "
        "either way round");
    CHECK(
        plan({{{mm(38), mm(38)}, true, {}, {}}}, roll(100, mm(150))).message() ==
        "the label is 38 mm round, but the labels of the roll “roll” are 100 × 150 mm: it would come off with corners");
    const Planned ready_cut = plan(labels(1, 60, 140), roll(100, mm(150)));
    CHECK(ready_cut.sheets[0].paper == Size{mm(100), mm(150)});
    CHECK(ready_cut.sheets[0].slots[0].origin == Point{mm(20), mm(5)});
}

TEST_CASE("a card that leaves too little film in its pouch is refused with the sum", "[sheets]") {
    Stock stock = card();
    stock.laminate = Laminate{*find_pouch("A6"), mm(3), true};
    CHECK(plan(labels(1, 105, 148), stock).counts() == Counts{1}); // A6 in its pouch: 105 + 2 × 3 = 111
    CHECK(plan(labels(1, 148, 105), stock).counts() == Counts{1}); // on its side
    stock.laminate->film = mm(4);
    CHECK(plan(labels(1, 105, 148), stock).message() == "the card is 105 × 148 mm, and with film on both sides 105 + 2 "
                                                        "× 4 = 113 mm; the pouch of “card” is 111 mm wide: "
                                                        "2 mm are missing");
    CHECK(plan(labels(1, 100, 148), stock).message() == "the card is 100 × 148 mm, and with film on both sides 148 + 2 "
                                                        "× 4 = 156 mm; the pouch of “card” is 154 mm high: "
                                                        "2 mm are missing");
}

TEST_CASE("a page per label is as large as the label and its bleed", "[sheets]") {
    Stock stock;
    stock.page_per_label = true;
    std::vector<Trim> wanted = labels(1, 62, 29);
    wanted.push_back({{mm(40), mm(80)}, false, {}, mm(3)});
    const Planned planned = plan(wanted, stock, {{2, 2}, {}});
    REQUIRE(planned.counts() == Counts{1, 1, 1, 1});
    CHECK(planned.sheets[1].paper == Size{mm(62), mm(29)});
    CHECK(planned.sheets[2].paper == Size{mm(46), mm(86)});
    CHECK(planned.sheets[2].slots[0].origin == Point{mm(3), mm(3)});
}

TEST_CASE("a sheet without room for the test line is warned of", "[sheets]") {
    Stock stock = cells();
    stock.cells = CellGrid{2, 2, {mm(100), mm(143)}, false, {mm(5), mm(5.5)}, mm(100), mm(143)};
    const Planned planned = plan(labels(8, 100, 143), stock);
    CHECK(planned.counts() == Counts{4, 4});
    CHECK(planned.diagnostics.warnings() == 1);
    CHECK_THAT(planned.message(), Catch::Contains("no room for the 100 mm test line"));
    CHECK(plan(labels(8, 85, 55), card()).diagnostics.warnings() == 0);
}

TEST_CASE("cards that share a pouch are shown where they lie, once for every way", "[sheets]") {
    Stock stock = card();
    stock.laminate = Laminate{*find_pouch("A4"), mm(4), false};
    stock.gap = mm(8);
    const std::vector<Trim> alike = labels(9, 74, 105);
    const Planned planned = plan(alike, stock);
    REQUIRE(planned.counts() == Counts{4, 4, 1});
    CHECK(sheets_to_lay(planned.sheets, alike) == Counts{0});
    std::vector<Trim> mixed = labels(4, 74, 105);
    mixed.insert(mixed.end(), 4, {{mm(80), mm(105)}, false, {}, {}});
    CHECK(sheets_to_lay(plan(mixed, stock).sheets, mixed) == Counts{0, 1});
}

TEST_CASE("on the lay-out sheet every card has its outline, and its film round it", "[sheets]") {
    Stock stock = card();
    stock.laminate = Laminate{*find_pouch("A4"), mm(4), false};
    stock.gap = mm(8);
    const std::vector<Trim> four = labels(4, 74, 105);
    const SheetPlan sheet = plan(four, stock).sheets.at(0);
    const std::vector<DisplayList> numbers(4, DisplayList{{mm(4), mm(6)}, {}});
    const DisplayList drawn = compose_laying_sheet(sheet, numbers, four, stock, {{mm(80), mm(2.8)}, {}});
    CHECK(drawn.size == sheet.paper);
    REQUIRE(drawn.items.size() == 4 + 1); // the cards, and the test line
    for (std::size_t i = 0; i < 4; ++i) {
        const auto& placed = std::get<Group>(drawn.items[i]);
        const auto starts_at = [&](std::size_t item) {
            const auto& stroke = std::get<StrokePath>(placed.list->items.at(item));
            return placed.transform.apply(std::get<MoveTo>(stroke.path.front()).to);
        };
        CHECK(starts_at(0) == sheet.slots[i].origin);
        CHECK(starts_at(1) == sheet.slots[i].origin + Point{{}, mm(-4)}); // after a corner of 4 mm
    }
}

// The closed form of a sector: its film ends on circles about the same centre, a film's width further in and out.
TEST_CASE("on the lay-out sheet a card that is cut along an arc has its film along the arc", "[sheets]") {
    Stock stock = card();
    stock.laminate = Laminate{*find_pouch("A4"), mm(4), false};
    stock.gap = mm(8);
    const Sector sector{mm(150), mm(200), 0.6, true};
    Trim bent{sector.bounds(), false, {}, {}};
    bent.sector = sector;
    const SheetPlan sheet = plan({bent}, stock).sheets.at(0);
    const DisplayList drawn =
        compose_laying_sheet(sheet, {{{mm(4), mm(6)}, {}}}, {bent}, stock, {{mm(80), mm(2.8)}, {}});
    const auto& card_items = std::get<Group>(drawn.items.at(0)).list->items;
    Length least = mm(1000);
    Length most;
    for (const auto& step : std::get<StrokePath>(card_items.at(1)).path) {
        const auto* curve = std::get_if<CurveTo>(&step);
        if (curve == nullptr) continue;
        const Point from_centre = curve->to - sector.centre();
        const Length radius = mm(std::hypot(from_centre.x.in_mm(), from_centre.y.in_mm()));
        least = smaller(least, radius);
        most = larger(most, radius);
    }
    CHECK(near(least, mm(146)));
    CHECK(near(most, mm(204)));
    const Transform& number = std::get<Group>(card_items.at(2)).transform;
    CHECK(near(number.dx + mm(2), sector.centre().x));
    CHECK(near(number.dy + mm(3), sector.centre().y - mm(175)));
}
