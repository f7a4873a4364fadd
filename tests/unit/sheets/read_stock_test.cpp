#include "sheets/stock.h"

#include <catch2/catch.hpp>

using namespace dyeleaf;

namespace {

struct Read {
    std::optional<Stock> stock;
    Diagnostics diagnostics;
    [[nodiscard]] Diagnostic first() const {
        const auto sorted = diagnostics.sorted();
        return sorted.empty() ? Diagnostic{} : sorted.front();
    }
};

Read read(const std::string& text) {
    Read result;
    const auto file = std::make_shared<SourceFile>(SourceFile{"stock.yaml", text});
    const auto node = parse_document(file, result.diagnostics);
    if (node) result.stock = read_stock(*node, result.diagnostics);
    return result;
}

// Cells in one line: 3 × 7 of 60 × 38 mm, with `change` put in place of the key that it starts with.
std::string cells(const std::string& change = {}) {
    std::string text = "stock: cells\npaper: A4\ncells:\n";
    const std::string changed = change.substr(0, change.find(':'));
    for (const std::string line : {"columns: 3", "rows: 7", "width: 60 mm", "height: 38 mm", "left: 10 mm",
                                   "top: 15 mm", "across: 65 mm", "down: 38 mm"}) {
        const bool this_one = !change.empty() && line.substr(0, line.find(':')) == changed;
        text += "  " + (this_one ? change : line) + "\n";
    }
    return text;
}

} // namespace

TEST_CASE("plain card is read with its paper, margin and gap", "[sheets]") {
    const Read result = read("stock: my-card\nabout: thick card\npaper: A5\nmargin: 5 mm\ngap: 8 mm\nturn: no\n");
    REQUIRE(result.stock);
    CHECK(result.diagnostics.warnings() == 0);
    CHECK(result.stock->name == "my-card");
    CHECK(result.stock->about == "thick card");
    CHECK(result.stock->paper == Size{mm(148), mm(210)});
    CHECK(result.stock->margin == mm(5));
    CHECK(result.stock->gap == mm(8));
    CHECK_FALSE(result.stock->may_turn);
    CHECK_FALSE(result.stock->cells);
}

TEST_CASE("paper may lie on its side, and may have a size of its own", "[sheets]") {
    CHECK(read("stock: x\npaper: A4\nsideways: yes\n").stock->paper == Size{mm(297), mm(210)});
    CHECK(read("stock: x\npaper: {width: 100 mm, height: 150 mm}\n").stock->paper == Size{mm(100), mm(150)});
}

TEST_CASE("a stock remembers whether it was written in inches", "[sheets]") {
    CHECK(read("stock: x\npaper: Letter\nmargin: 0.25 in\n").stock->in_inches);
    CHECK(read("stock: x\nroll: {width: 4 in}\n").stock->in_inches);
    CHECK_FALSE(read("stock: pumpkin\nabout: 4 × 6 in\npaper: Letter\nmargin: 6 mm\n").stock->in_inches);
}

TEST_CASE("cells are read with their grid", "[sheets]") {
    const Read result = read(cells());
    REQUIRE(result.stock);
    REQUIRE(result.stock->cells);
    const CellGrid& grid = *result.stock->cells;
    CHECK(grid.columns == 3);
    CHECK(grid.rows == 7);
    CHECK(grid.cell == Size{mm(60), mm(38)});
    CHECK(grid.first == Point{mm(10), mm(15)});
    CHECK(grid.across == mm(65));
    CHECK(grid.down == mm(38));
    CHECK_FALSE(grid.round);
}

TEST_CASE("a single column needs no pitch", "[sheets]") {
    const Read result = read("stock: x\npaper: A4\ncells: {columns: 1, rows: 2, width: 150 mm, height: 100 mm, "
                             "left: 30 mm, top: 20 mm, down: 120 mm}\n");
    CHECK(result.stock);
    CHECK(result.diagnostics.errors() == 0);
}

TEST_CASE("a page per label needs no paper and takes none", "[sheets]") {
    CHECK(read("stock: page\npage per label: yes\n").stock->page_per_label);
    CHECK(read("stock: page\npage per label: yes\ncut marks: yes\n").stock->page_marks);
    const Read result = read("stock: page\npage per label: yes\npaper: A4\n");
    CHECK_FALSE(result.stock);
    CHECK(result.first().message == "“paper” says nothing here: the page is as large as the label");
    CHECK(result.first().spot.line == 3);
}

TEST_CASE("paper that is not known is an error with the nearest", "[sheets]") {
    const Read result = read("stock: x\npaper: Leter\n");
    CHECK_FALSE(result.stock);
    CHECK(result.first().message == "there is no paper called “Leter”");
    CHECK_THAT(result.first().help, Catch::Contains("did you mean “Letter”?"));
    CHECK(result.first().spot.line == 2);
    CHECK(result.first().spot.column == 8);
}

TEST_CASE("a key that is not known is an error with the nearest", "[sheets]") {
    const Read result = read("stock: x\npaper: A4\nmargn: 5 mm\n");
    CHECK_FALSE(result.stock);
    CHECK(result.first().spot.line == 3);
    CHECK_THAT(describe(result.first()), Catch::Contains("“margin”"));
}

TEST_CASE("a length without a unit is an error", "[sheets]") {
    CHECK_FALSE(read("stock: x\npaper: A4\nmargin: 5\n").stock);
}

TEST_CASE("cells off the sheet are shown with their arithmetic", "[sheets]") {
    const Read wide = read("stock: x\npaper: A4\ncells: {columns: 3, rows: 1, width: 70 mm, height: 50 mm, "
                           "left: 5 mm, top: 5 mm, across: 72 mm}\n");
    CHECK_FALSE(wide.stock);
    CHECK(wide.first().message == "5 + 3 × 70 + 2 × 2 = 219 mm, the sheet is 210 mm wide: the cells run 9 mm off it");
    CHECK(read(cells("top: 40 mm")).first().message ==
          "40 + 7 × 38 = 306 mm, the sheet is 297 mm high: the cells run 9 mm off it");
}

TEST_CASE("a single cell off the sheet is shown with its arithmetic", "[sheets]") {
    const Read result = read("stock: x\npaper: A6\ncells: {columns: 1, rows: 1, width: 100 mm, height: 50 mm, "
                             "left: 10 mm, top: 5 mm}\n");
    CHECK(result.first().message == "10 + 100 = 110 mm, the sheet is 105 mm wide: the cells run 5 mm off it");
}

TEST_CASE("cells that overlap are shown with their pitch", "[sheets]") {
    const Read result = read(cells("across: 55 mm"));
    CHECK_FALSE(result.stock);
    CHECK(result.first().message == "cells that are 60 mm wide overlap at a pitch of 55 mm");
}

// The sums of two common sheets: their figures add up to the sizes of ISO 216 and ANSI/ASME Y14.1.
TEST_CASE("cells may be written with gutters, and with all four margins to see that they add up", "[sheets]") {
    const Read metric = read("stock: x\npaper: A4\ncells: {columns: 3, rows: 7, width: 63.5 mm, height: 38.1 mm, "
                             "left: 7.25 mm, right: 7.25 mm, top: 15.15 mm, bottom: 15.15 mm, "
                             "gutters: {across: 2.5 mm, down: 0 mm}}\n");
    REQUIRE(metric.stock);
    CHECK(near(metric.stock->cells->across, mm(66)));
    CHECK(near(metric.stock->cells->down, mm(38.1)));
    CHECK(read("stock: x\npaper: Letter\ncells: {columns: 3, rows: 10, width: 2.625 in, height: 1 in, left: 0.1875 in, "
               "right: 0.1875 in, top: 0.5 in, bottom: 0.5 in, gutters: {across: 0.125 in, down: 0 in}}\n")
              .stock);
    const Read both =
        read("stock: x\npaper: A4\ncells: {columns: 2, rows: 2, width: 50 mm, height: 50 mm, left: 10 mm, "
             "top: 10 mm, gutter: 4 mm}\n");
    REQUIRE(both.stock);
    CHECK(both.stock->cells->across == mm(54));
    CHECK(both.stock->cells->down == mm(54));
}

TEST_CASE("margins, cells and gutters that do not add up to the sheet are shown with their sum", "[sheets]") {
    const auto sheet = [](const std::string& paper, const std::string& right) {
        return read("stock: x\npaper: " + paper +
                    "\ncells:\n  {columns: 3, rows: 1, width: 63.5 mm, height: 38.1 mm, left: 7.25 mm, gutter: 2.5 mm, "
                    "top: 10 mm,\n   right: " +
                    right + "}\n");
    };
    CHECK(sheet("A4", "7.25 mm").stock);
    CHECK(sheet("A4", "7.3 mm").stock); // nobody measures closer
    const Read short_of = sheet("Letter", "7.25 mm");
    CHECK_FALSE(short_of.stock);
    CHECK(short_of.first().message ==
          "7.25 + 3 × 63.5 + 2 × 2.5 + 7.25 = 210 mm, the sheet is 215.9 mm wide: 5.9 mm left over");
    CHECK(short_of.first().spot.line == 5);
    CHECK(sheet("A4", "8 mm").first().message ==
          "7.25 + 3 × 63.5 + 2 × 2.5 + 8 = 210.75 mm, the sheet is 210 mm wide: 0.75 mm too much");
    CHECK(read("stock: x\npaper: Letter\ncells: {columns: 3, rows: 1, width: 2.625 in, height: 1 in, left: 0.1875 in, "
               "right: 0.25 in, top: 0.5 in, across: 2.75 in}\n")
              .first()
              .message ==
          "0.1875 + 3 × 2.625 + 2 × 0.125 + 0.25 = 8.5625 in, the sheet is 8.5 in wide: 0.0625 in too much");
}

TEST_CASE("a pitch and a gutter that disagree are shown with their sum", "[sheets]") {
    CHECK(read(cells() + "  gutters: {across: 2.5 mm}\n").first().message ==
          "a cell of 60 mm and a gutter of 2.5 mm make 60 + 2.5 = 62.5 mm, but “across” says 65 mm");
    CHECK(read(cells() + "  gutters: {across: 5 mm, down: 0 mm}\n").stock);
    CHECK(read(cells() + "  gutter: 0 mm\n  gutters: {across: 5 mm}\n").first().message ==
          "“gutter” and “gutters” are both written");
}

TEST_CASE("a gutter that cannot be read is not asked for by another name", "[sheets]") {
    const Read result =
        read("stock: x\npaper: A4\ncells: {columns: 3, rows: 3, width: 60 mm, height: 38 mm, left: 5 mm, "
             "top: 5 mm, gutter: 2}\n");
    CHECK(result.diagnostics.errors() == 1);
    CHECK(result.first().message == "“2” has no unit");
}

TEST_CASE("cells may have rounded corners, up to half their shorter side", "[sheets]") {
    CHECK(read(cells() + "  corner: 2 mm\n").stock->cells->corner == mm(2));
    CHECK(read(cells() + "  corner: 19 mm\n").stock);
    CHECK(read(cells() + "  corner: 20 mm\n").first().message ==
          "corners with a radius of 20 mm do not fit a cell of 60 × 38 mm");
    CHECK(read(cells() + "  round: yes\n  corner: 2 mm\n").first().message == "a round cell has no corners");
}

TEST_CASE("plain card says how it is cut", "[sheets]") {
    CHECK(read("stock: x\npaper: A4\n").stock->cut == Cut::corner_marks);
    CHECK(read("stock: x\npaper: A4\ncut: corner marks\n").stock->cut == Cut::corner_marks);
    CHECK(read("stock: x\npaper: A4\ncut: full lines\n").stock->gap == mm(6));
    const Read single = read("stock: x\npaper: A4\ncut: single cuts\n");
    CHECK(single.stock->cut == Cut::single_cuts);
    CHECK(single.stock->gap == Length{});
    CHECK(read("stock: x\npaper: A4\ncut: single cuts\ngap: 2 mm\n").first().message ==
          "“gap” says nothing here: with single cuts the labels touch");
    CHECK(read("stock: x\npaper: A4\ncut: full line\n").first().message ==
          "“full line” is not one of the words for “cut”");
    CHECK(read(cells() + "cut: full lines\n").first().message ==
          "“cut” says nothing here: the cells are where they are");
}

TEST_CASE("a roll is read with its width, and the length of labels that come ready cut", "[sheets]") {
    const Read endless = read("stock: x\nroll: 62 mm\nmargin: 1.5 mm\ngap: 4 mm\n");
    REQUIRE(endless.stock);
    CHECK(endless.stock->roll->width == mm(62));
    CHECK_FALSE(endless.stock->roll->length);
    CHECK(endless.stock->page_per_label);
    CHECK(endless.stock->gap == mm(4));
    CHECK(read("stock: x\nroll: {width: 4 in, length: 6 in}\n").stock->roll->length == inches(6));
    CHECK(read("stock: x\nroll: {width: 62 mm}\n").stock->roll->width == mm(62));
    CHECK_FALSE(read("stock: x\nroll: wide\n").stock);
    CHECK(read("stock: x\nroll: {width: 62 mm}\npaper: A4\n").first().message ==
          "“paper” says nothing here: a roll has one label a page");
    CHECK(read("stock: x\nroll: {width: 62 mm, length: 90 mm}\ngap: 3 mm\n").first().message ==
          "“gap” says nothing here: the labels are where they are on the roll");
    CHECK(read("stock: x\nroll: {width: 20 mm}\nmargin: 6 mm\n").first().message ==
          "a roll of 20 mm has no room within a margin of 6 mm on either side");
    CHECK(read("stock: x\npage per label: yes\nroll: {width: 62 mm}\n").first().message ==
          "“roll” says nothing here: the page is as large as the label");
}

TEST_CASE("a stock for laminating has a pouch, and leaves film between its cards", "[sheets]") {
    const Read shared = read("stock: x\npaper: A4\nlaminate: {pouch: A4}\n");
    REQUIRE(shared.stock);
    CHECK(shared.stock->laminate->pouch == Size{mm(216), mm(303)}); // from memory
    CHECK(shared.stock->laminate->film == mm(4));
    CHECK(shared.stock->gap == mm(8)); // 4 mm round either of two cards
    CHECK(read("stock: x\npaper: A4\ngap: 6 mm\nlaminate: {pouch: A4, film: 4 mm}\n").first().message ==
          "two cards with 4 mm of film round each stand 2 × 4 mm = 8 mm apart, and the gap is 6 mm");
    CHECK(read("stock: x\npaper: A4\nlaminate: {pouch: A6}\n").first().message ==
          "the pouch is 111 × 154 mm, and the sheet, whose cards go into it together, is 210 × 297 mm");
    CHECK(read("stock: x\npaper: A4\nlaminate: {pouch: A6, card per pouch: yes}\n").stock->gap == mm(6));
    CHECK(read("stock: x\npaper: A4\nsideways: yes\nlaminate: {pouch: A4}\n").stock);
    CHECK(read("stock: x\npaper: A4\ncut: single cuts\nlaminate: {pouch: A4}\n").first().message ==
          "single cuts leave no room between the cards for the film round each");
    CHECK_THAT(read("stock: x\npaper: A4\nlaminate: {pouch: A9}\n").first().message,
               Catch::Contains("there is no pouch called “A9”"));
    CHECK_FALSE(read("stock: x\npaper: A4\nlaminate: {pouch: A4, film: 1 mm}\n").stock);
}

TEST_CASE("gap and turn say nothing where there are cells", "[sheets]") {
    CHECK(read(cells() + "gap: 3 mm\n").first().message == "“gap” says nothing here: the cells are where they are");
}

TEST_CASE("every problem of a stock file is reported", "[sheets]") {
    CHECK(read("stock: x\npaper: A4\nmargin: 5\ncolour: red\ngap: wide\n").diagnostics.errors() == 3);
}
