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
    CHECK(wide.first().message ==
          "3 cells of 70 mm at a pitch of 72 mm from 5 mm reach 219 mm, the sheet is 210 mm wide");
    CHECK(read(cells("top: 40 mm")).first().message ==
          "7 cells of 38 mm at a pitch of 38 mm from 40 mm reach 306 mm, the sheet is 297 mm high");
}

TEST_CASE("a single cell off the sheet is shown with its arithmetic", "[sheets]") {
    const Read result = read("stock: x\npaper: A6\ncells: {columns: 1, rows: 1, width: 100 mm, height: 50 mm, "
                             "left: 10 mm, top: 5 mm}\n");
    CHECK(result.first().message == "1 cell of 100 mm from 10 mm reaches 110 mm, the sheet is 105 mm wide");
}

TEST_CASE("cells that overlap are shown with their pitch", "[sheets]") {
    const Read result = read(cells("across: 55 mm"));
    CHECK_FALSE(result.stock);
    CHECK(result.first().message == "cells that are 60 mm wide overlap at a pitch of 55 mm");
}

TEST_CASE("gap and turn say nothing where there are cells", "[sheets]") {
    CHECK(read(cells() + "gap: 3 mm\n").first().message == "“gap” says nothing here: the cells are where they are");
}

TEST_CASE("every problem of a stock file is reported", "[sheets]") {
    CHECK(read("stock: x\npaper: A4\nmargin: 5\ncolour: red\ngap: wide\n").diagnostics.errors() == 3);
}
