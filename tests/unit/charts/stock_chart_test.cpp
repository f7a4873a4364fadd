#include "charts/stock_chart.h"
#include "charts/stock_figure.h"
#include "charts/stock_words.h"
#include "english.h"

#include <catch2/catch.hpp>

using namespace dyeleaf;

namespace {

Stock cells() {
    Stock stock;
    stock.name = "cells";
    stock.paper = *find_paper("A4");
    stock.margin = mm(5);
    stock.cells = CellGrid{3, 7, {mm(63.5), mm(38.1)}, false, {mm(7.25), mm(15.15)}, mm(66), mm(38.1)};
    return stock;
}

// With plain spaces.
std::vector<std::string> words(const Stock& stock) {
    std::vector<std::string> lines = stock_words(stock, english());
    for (std::string& line : lines) {
        for (auto at = line.find("\u00A0"); at != std::string::npos; at = line.find("\u00A0"))
            line.replace(at, 2, " ");
    }
    return lines;
}

using Lines = std::vector<std::string>;

} // namespace

TEST_CASE("a stock is drawn to scale, its cells counted row by row", "[charts]") {
    const StockFigure figure = draw_stock(cells(), 0.2);
    CHECK(near(figure.drawing.size.width, mm(42)));
    CHECK(near(figure.drawing.size.height, mm(59.4)));
    REQUIRE(figure.cells.size() == 21);
    CHECK(near(figure.cells[4].left(), mm((7.25 + 66) / 5))); // cell 5: the second of the second row
    CHECK(near(figure.cells[4].top(), mm((15.15 + 38.1) / 5)));
    CHECK(near(figure.cells[4].size.width, mm(63.5 / 5)));
}

TEST_CASE("a stock's measures are said with all four margins", "[charts]") {
    CHECK(words(cells()) == Lines{"210 × 297 mm", "3 × 7 cells, 63.5 × 38.1 mm",
                                  "to the edges: left 7.25, top 15.15, right 7.25, bottom 15.15 mm",
                                  "gutters: 2.5 across, 0 mm down", "the printer leaves 5 mm white"});
    Stock oval = cells();
    oval.cells->round = true;
    CHECK(words(oval)[1] == "3 × 7 cells, 63.5 × 38.1 mm oval");
    oval.cells->cell = {mm(38), mm(38)};
    CHECK(words(oval)[1] == "3 × 7 cells, 38 mm round");
    Stock rounded = cells();
    rounded.cells->corner = mm(2);
    CHECK(words(rounded)[1] == "3 × 7 cells, 63.5 × 38.1 mm, corners 2 mm");
}

TEST_CASE("a stock that is written in inches is shown in inches", "[charts]") {
    Stock stock;
    stock.in_inches = true;
    stock.paper = *find_paper("Letter");
    stock.margin = inches(0.16);
    stock.cells =
        CellGrid{3, 10, {inches(2.625), inches(1)}, false, {inches(0.1875), inches(0.5)}, inches(2.75), inches(1)};
    CHECK(words(stock) == Lines{"8.5 × 11 in", "3 × 10 cells, 2.625 × 1 in",
                                "to the edges: left 0.1875, top 0.5, right 0.1875, bottom 0.5 in",
                                "gutters: 0.125 across, 0 in down", "the printer leaves 0.16 in white"});
}

TEST_CASE("plain card, rolls and pages are said in their own words", "[charts]") {
    Stock card;
    card.paper = *find_paper("A4");
    card.gap = mm(8);
    card.cut = Cut::full_lines;
    card.laminate = Laminate{*find_pouch("A4"), mm(4), false};
    CHECK(words(card) == Lines{"210 × 297 mm", "cut along lines across the sheet", "8 mm between labels",
                               "a sheet’s cards share a pouch of 216 × 303 mm; 4 mm of film round each"});
    Stock roll;
    roll.page_per_label = true;
    roll.roll = Roll{mm(62), mm(90)};
    roll.margin = mm(1.5);
    CHECK(words(roll) == Lines{"a roll 62 mm wide", "ready-cut labels 90 mm long", "the printer leaves 1.5 mm white"});
    Stock page;
    page.page_per_label = true;
    CHECK(words(page) == Lines{"a page as large as the label and its bleed"});
}
