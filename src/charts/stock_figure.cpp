#include "charts/stock_figure.h"

#include "display/transform_path.h"
#include "sheets/impose.h"
#include "sheets/outline.h"
#include "sheets/sheet_geometry.h"

#include <algorithm>
#include <memory>
#include <utility>

namespace dyeleaf {

namespace {

constexpr Rgb white = {1, 1, 1};
constexpr Rgb paper_line = {0.45, 0.45, 0.45};
constexpr Rgb unprinted = {0.90, 0.90, 0.88};
constexpr Rgb label_fill = {0.86, 0.91, 0.94};
constexpr Rgb label_line = {0.33, 0.45, 0.53};
constexpr Rgb film_line = {0.20, 0.55, 0.62};
constexpr Length thin = pt(0.25);
constexpr Length thick = pt(0.5);
constexpr Length pouch_corner = mm(4);

// Draws in millimetres of the stock.
class Pencil {
  public:
    Pencil(DisplayList& list, double scale, Point origin) : list_(&list), scale_(scale), origin_(origin) {}

    void fill(const Path& path, Rgb colour) { list_->items.emplace_back(FillPath{scaled(path), colour}); }
    void line(const Path& path, Rgb colour, Length width, std::vector<Length> dash = {}) {
        list_->items.emplace_back(StrokePath{scaled(path), colour, width, std::move(dash)});
    }
    [[nodiscard]] Rect rect(Rect rect) const {
        return {point(rect.origin), {rect.size.width * scale_, rect.size.height * scale_}};
    }

  private:
    [[nodiscard]] Point point(Point p) const { return origin_ + Point{p.x * scale_, p.y * scale_}; }
    [[nodiscard]] Path scaled(Path path) const {
        return transformed(std::move(path), {scale_, 0, 0, scale_, origin_.x, origin_.y});
    }

    DisplayList* list_;
    double scale_;
    Point origin_;
};

const std::vector<Length> dashes = {pt(2), pt(1.5)};

Path outline(Rect rect, const CellGrid& grid) {
    return grid.round ? ellipse_path(rect) : rounded_path(rect, grid.corner);
}

void draw_paper(Pencil& pencil, const Stock& stock, Size paper) {
    pencil.fill(rect_path({{}, paper}), unprinted);
    pencil.fill(rect_path(shrunk({{}, paper}, Insets::all(stock.margin))), white);
    pencil.line(rect_path({{}, paper}), paper_line, thick);
}

void draw_label(Pencil& pencil, const Path& path) {
    pencil.fill(path, label_fill);
    pencil.line(path, label_line, thin);
}

// Marks and lines of the sheet as it is printed, in their places; only their thickness is the drawing's.
void draw_cuts(Pencil& pencil, const DisplayList& sheet) {
    for (const DisplayItem& item : sheet.items) {
        if (const auto* cut = std::get_if<StrokePath>(&item)) pencil.line(cut->path, cut->colour, thin);
    }
}

void draw_film(Pencil& pencil, const std::vector<Rect>& cards, const Laminate& laminate, Size paper) {
    for (const Rect& card : cards) {
        if (laminate.one_each) {
            const bool turns = (card.size.width > card.size.height) != (laminate.pouch.width > laminate.pouch.height);
            const Size pouch = turns ? turned_size(Turn::right, laminate.pouch) : laminate.pouch;
            const Point corner = card.centre() - Point{pouch.width / 2, pouch.height / 2};
            pencil.line(rounded_path({corner, pouch}, pouch_corner), film_line, thin);
        } else {
            pencil.line(rounded_path(grown(card, laminate.film), laminate.film), film_line, thin, dashes);
        }
    }
    if (laminate.one_each) return;
    const Size pouch = laminate.pouch;
    const Point corner = {(paper.width - pouch.width) / 2, (paper.height - pouch.height) / 2};
    pencil.line(rounded_path({corner, pouch}, pouch_corner), film_line, thick);
}

struct Sample {
    SheetPlan plan;
    DisplayList composed;
    std::vector<Rect> places;
};

// The first sheet full of labels like this one.
Sample sample_of(const Stock& stock, const Trim& trim) {
    constexpr int plenty = 60;
    Diagnostics unheard;
    const auto plans = plan_sheets(std::vector{trim}, stock, {{stock.page_per_label ? 1 : plenty}, {}}, {}, unheard);
    if (plans.empty()) return {{stock.paper, {}}, {stock.paper, {}}, {}};
    Sample sample{plans.front(), {}, {}};
    const std::vector<Trim> trims(sample.plan.slots.size(), trim);
    const auto blank = std::make_shared<const DisplayList>(DisplayList{trim.size, {}});
    const std::vector<std::shared_ptr<const DisplayList>> lists(trims.size(), blank);
    sample.composed = compose_sheet(sample.plan, lists, trims, stock, Side::front, {});
    for (const Slot& slot : sample.plan.slots)
        sample.places.push_back(place_of(slot, trim));
    return sample;
}

DisplayList empty_drawing(Size size, double scale) {
    return {{size.width * scale, size.height * scale}, {}};
}

StockFigure draw_cells(const Stock& stock, double scale) {
    StockFigure figure{empty_drawing(stock.paper, scale), {}};
    Pencil pencil{figure.drawing, scale, {}};
    draw_paper(pencil, stock, stock.paper);
    for (const Rect& cell : cell_rects(*stock.cells)) {
        draw_label(pencil, outline(cell, *stock.cells));
        figure.cells.push_back(pencil.rect(cell));
    }
    return figure;
}

// As large as a pouch of its own takes it.
Size sample_card(const Stock& stock) {
    if (!stock.laminate || !stock.laminate->one_each) return sample_label;
    const auto& [pouch, film, one_each] = *stock.laminate;
    return {pouch.width - film * 2, pouch.height - film * 2};
}

StockFigure draw_card(const Stock& stock, double scale) {
    Stock upright = stock; // as its measures are said
    upright.may_turn = false;
    const Sample sample = sample_of(upright, {sample_card(stock), false, {}, {}});
    const bool in_pouch = stock.laminate && !stock.laminate->one_each;
    const Size whole = in_pouch ? stock.laminate->pouch : stock.paper;
    const Size paper = sample.plan.paper;
    const bool lies = paper.width > paper.height;
    const Size around = (whole.width > whole.height) == lies ? whole : turned_size(Turn::right, whole);
    StockFigure figure{empty_drawing(around, scale), {}};
    Pencil pencil{figure.drawing,
                  scale,
                  {(around.width - paper.width) * (scale / 2), (around.height - paper.height) * (scale / 2)}};
    draw_paper(pencil, stock, paper);
    for (const Rect& place : sample.places)
        draw_label(pencil, rect_path(place));
    draw_cuts(pencil, sample.composed);
    if (stock.laminate) {
        Laminate laminate = *stock.laminate;
        if (in_pouch) laminate.pouch = around;
        draw_film(pencil, sample.places, laminate, paper);
    }
    return figure;
}

// One page of the roll with a piece of the next on either side.
StockFigure draw_roll(const Stock& stock, double scale) {
    const Roll& roll = *stock.roll;
    const Length across = roll.width - stock.margin * 2;
    const Size label = {across, roll.length ? *roll.length - stock.margin * 2 : across};
    const Sample sample = sample_of(stock, {label, false, {}, {}});
    const Size page = sample.plan.paper;
    constexpr Length piece = mm(20);
    StockFigure figure{empty_drawing({page.width, page.height + piece * 2}, scale), {}};
    Pencil pencil{figure.drawing, scale, {{}, piece * scale}};
    const Rect strip = {{{}, -piece}, {page.width, page.height + piece * 2}};
    pencil.fill(rect_path(strip), unprinted);
    pencil.fill(rect_path({{stock.margin, -piece}, {across, strip.size.height}}), white);
    for (const Length x : {Length{}, page.width})
        pencil.line(line_path({x, strip.top()}, {x, strip.bottom()}), paper_line, thick);
    for (const Rect& place : sample.places)
        draw_label(pencil, rect_path(place));
    for (const Length y : {Length{}, page.height})
        pencil.line(line_path({{}, y}, {page.width, y}), paper_line, thick, dashes);
    return figure;
}

StockFigure draw_page(const Stock& stock, double scale) {
    constexpr Length bleed = mm(3);
    const Sample sample = sample_of(stock, {sample_label, false, {}, bleed});
    const Size page = sample.plan.paper;
    StockFigure figure{empty_drawing(page, scale), {}};
    Pencil pencil{figure.drawing, scale, {}};
    pencil.fill(rect_path({{}, page}), white);
    for (const Rect& place : sample.places) {
        pencil.fill(rect_path(grown(place, bleed)), label_fill);
        pencil.line(rect_path(place), label_line, thin, dashes);
    }
    draw_cuts(pencil, sample.composed);
    pencil.line(rect_path({{}, page}), paper_line, thick);
    return figure;
}

} // namespace

StockFigure draw_stock(const Stock& stock, double scale) {
    if (stock.roll) return draw_roll(stock, scale);
    if (stock.page_per_label) return draw_page(stock, scale);
    return stock.cells ? draw_cells(stock, scale) : draw_card(stock, scale);
}

} // namespace dyeleaf
