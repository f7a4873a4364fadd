#include "charts/stock_chart.h"

#include "charts/stock_figure.h"
#include "charts/stock_words.h"
#include "text/writing.h"

#include <memory>

namespace dyeleaf {

namespace {

constexpr double scale = 1.0 / 6;
constexpr Size page_size = {mm(210), mm(297)};
constexpr Insets rim = {mm(12), mm(11), mm(12), mm(11)};
constexpr Length least_width = mm(41); // of a stock's words
constexpr Length between = mm(4.4);
constexpr Length below = mm(4.5);
constexpr Length after_name = mm(1.5);
constexpr Length after_drawing = mm(1.8);
constexpr Length head_depth = mm(17.5);

constexpr Type title_type = {pt(17), 700, 1.2};
constexpr Type line_type = {pt(8), 400, 1.4};
constexpr Type name_type = {pt(8), 700, 1.25};
constexpr Type words_type = {pt(6.5), 400, 1.35};
constexpr Length largest_number = pt(8);

class StockChart {
  public:
    StockChart(const Language& language, const Typesetter& typesetter) : language_(language), typesetter_(typesetter) {}

    std::vector<DisplayList> draw(const std::vector<ChartedStock>& stocks) {
        begin_page();
        for (const ChartedStock& stock : stocks)
            place(stock);
        for (std::size_t i = 0; i < pages_.size(); ++i)
            draw_foot(pages_[i], i + 1);
        return std::move(pages_);
    }

  private:
    void begin_page() {
        pages_.push_back({page_size, {}});
        at_ = {rim.left, rim.top};
        row_ = {};
        if (pages_.size() > 1) return;
        Writing writing{pages_.back(), typesetter_};
        const Length width = page_size.width - rim.across();
        const Length title = writing.paragraph(language_.say("stocks.title"), title_type, at_, width);
        writing.paragraph(language_.say("stocks.scale"), line_type, at_ + Point{{}, title + mm(0.5)}, width);
        at_.y += head_depth;
    }

    // In rows from left to right, each as high as its highest.
    void place(const ChartedStock& stock) {
        const StockFigure figure = draw_stock(stock.stock, scale);
        DisplayList trial{page_size, {}};
        const Size size = draw_tile(trial, {}, stock, figure);
        if (at_.x > rim.left && !fits(at_.x + size.width, page_size.width - rim.right)) {
            at_ = {rim.left, at_.y + row_ + below};
            row_ = {};
        }
        if (!fits(at_.y + size.height, page_size.height - rim.bottom)) begin_page();
        draw_tile(pages_.back(), at_, stock, figure);
        at_.x += size.width + between;
        row_ = larger(row_, size.height);
    }

    Size draw_tile(DisplayList& page, Point at, const ChartedStock& stock, const StockFigure& figure) {
        const Length width = larger(figure.drawing.size.width, least_width);
        Writing writing{page, typesetter_};
        Length y = at.y;
        const std::string name = stock.own ? language_.say("stocks.yours", {{"name", stock.name}}) : stock.name;
        y += writing.paragraph(name, name_type, {at.x, y}, width) + after_name;
        const Point corner = {at.x, y};
        page.items.emplace_back(
            Group{std::make_shared<const DisplayList>(figure.drawing), Transform::move(corner), std::nullopt});
        int number = 0;
        for (const Rect& cell : figure.cells) {
            const Type type = {smaller(largest_number, cell.size.height * 0.6), 400};
            const Point middle = corner + cell.centre() + Point{{}, writing.cap_height(type) / 2};
            writing.figure(std::to_string(++number), type, middle, Against::middle);
        }
        y += figure.drawing.size.height + after_drawing;
        for (const std::string& line : stock_words(stock.stock, language_))
            y += writing.paragraph(line, words_type, {at.x, y}, width);
        return {width, y - at.y};
    }

    // A length to hold the drawings against, and the page's number.
    void draw_foot(DisplayList& page, std::size_t number) {
        constexpr Length shown = mm(100);
        constexpr Length tick = mm(1.2);
        const Point start = {rim.left, page_size.height - mm(7)};
        const Point end = start + Point{shown * scale, {}};
        for (const auto& [from, to] :
             {std::pair{start, end}, std::pair{start - Point{{}, tick}, start}, std::pair{end - Point{{}, tick}, end}})
            page.items.emplace_back(StrokePath{line_path(from, to), Rgb{}, pt(0.5), {}});
        Writing writing{page, typesetter_};
        writing.paragraph(language_.say("stocks.bar"), words_type, end + Point{mm(2), mm(-2)}, mm(100));
        const std::string place = language_.say(
            "sheet.place", {{"number", std::to_string(number)}, {"count", std::to_string(pages_.size())}});
        writing.paragraph(place, words_type, {page_size.width - rim.right, end.y - mm(2)}, mm(60), Against::right);
    }

    const Language& language_;
    const Typesetter& typesetter_;
    std::vector<DisplayList> pages_;
    Point at_;   // of the next stock
    Length row_; // how high the row is so far
};

} // namespace

std::vector<DisplayList> draw_stock_chart(const std::vector<ChartedStock>& stocks, const Language& language,
                                          const Typesetter& typesetter) {
    return StockChart{language, typesetter}.draw(stocks);
}

} // namespace dyeleaf
