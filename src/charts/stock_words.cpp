#include "charts/stock_words.h"

#include <algorithm>

namespace dyeleaf {

namespace {

constexpr std::string_view no_break_space = "\u00A0";

class StockWords {
  public:
    StockWords(const Stock& stock, const Language& language) : stock_(stock), language_(language) {}

    std::vector<std::string> lines() {
        if (stock_.roll) {
            roll();
        } else if (stock_.page_per_label) {
            say(stock_.page_marks ? "stocks.page marks" : "stocks.page", {});
        } else {
            lines_.push_back(size(stock_.paper));
            if (stock_.cells) {
                cells(*stock_.cells);
            } else {
                card();
            }
        }
        if (stock_.margin > Length{} && (!stock_.page_per_label || stock_.roll))
            say("stocks.margin", {{"margin", length(stock_.margin)}});
        return std::move(lines_);
    }

  private:
    [[nodiscard]] std::string figure(Length length) const {
        return stock_.in_inches ? language_.number(length / inches(1), 4) : language_.number(length.in_mm(), 2);
    }
    [[nodiscard]] std::string length(Length length) const {
        return figure(length) + std::string{no_break_space} + (stock_.in_inches ? "in" : "mm");
    }
    [[nodiscard]] std::string size(Size size) const {
        const std::string space{no_break_space};
        return figure(size.width) + space + "×" + space + length(size.height);
    }
    void say(std::string_view key, std::initializer_list<Filling> fillings) {
        lines_.push_back(language_.say(key, fillings));
    }

    void cells(const CellGrid& grid) {
        const bool circle = grid.round && near(grid.cell.width, grid.cell.height);
        std::string cell = circle ? length(grid.cell.width) : size(grid.cell);
        if (grid.round) cell = language_.say(circle ? "stocks.round" : "stocks.oval", {{"size", cell}});
        if (grid.corner > Length{})
            cell = language_.say("stocks.rounded", {{"size", cell}, {"corner", length(grid.corner)}});
        say("stocks.cells",
            {{"columns", std::to_string(grid.columns)}, {"rows", std::to_string(grid.rows)}, {"cell", cell}});
        const Length right = stock_.paper.width - grid.first.x - grid.across * (grid.columns - 1) - grid.cell.width;
        const Length bottom = stock_.paper.height - grid.first.y - grid.down * (grid.rows - 1) - grid.cell.height;
        say("stocks.edges", {{"left", figure(grid.first.x)},
                             {"top", figure(grid.first.y)},
                             {"right", figure(right)},
                             {"bottom", length(bottom)}});
        if (grid.columns * grid.rows == 1) return;
        say("stocks.gutters",
            {{"across", figure(grid.across - grid.cell.width)}, {"down", length(grid.down - grid.cell.height)}});
    }

    void card() {
        say(stock_.cut == Cut::full_lines    ? "stocks.full lines"
            : stock_.cut == Cut::single_cuts ? "stocks.single cuts"
                                             : "stocks.corner marks",
            {});
        if (stock_.cut != Cut::single_cuts) say("stocks.gap", {{"gap", length(stock_.gap)}});
        if (!stock_.laminate) return;
        say(stock_.laminate->one_each ? "stocks.pouch each" : "stocks.pouch shared",
            {{"pouch", size(stock_.laminate->pouch)}, {"film", length(stock_.laminate->film)}});
    }

    void roll() {
        say("stocks.roll", {{"width", length(stock_.roll->width)}});
        if (stock_.roll->length) return say("stocks.ready cut", {{"length", length(*stock_.roll->length)}});
        say("stocks.cut off", {});
        if (stock_.gap > Length{}) say("stocks.gap", {{"gap", length(stock_.gap)}});
    }

    const Stock& stock_;
    const Language& language_;
    std::vector<std::string> lines_;
};

} // namespace

std::vector<std::string> stock_words(const Stock& stock, const Language& language) {
    return StockWords{stock, language}.lines();
}

} // namespace dyeleaf
