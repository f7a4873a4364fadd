// Fronts and backs of every bundled stock, laid on each other.
#include "project_folder.h"
#include "sheets/impose.h"
#include "source/files.h"

#include <algorithm>
#include <catch2/catch.hpp>

using namespace dyeleaf;

namespace {

std::vector<Stock> bundled_stocks() {
    std::vector<std::filesystem::path> files;
    for (const auto& entry : std::filesystem::directory_iterator{project_folder() / "layouts" / "stocks"})
        files.push_back(entry.path());
    std::ranges::sort(files);
    std::vector<Stock> stocks;
    for (const auto& path : files) {
        Diagnostics diagnostics;
        const auto file = read_file(path, path.filename().string(), 100'000, diagnostics);
        const auto node = parse_document(file, diagnostics);
        auto stock = read_stock(*node, diagnostics);
        CAPTURE(path);
        REQUIRE(stock);
        stocks.push_back(std::move(*stock));
    }
    return stocks;
}

// The bundled ones are alike on either side of their middle; this one is not, and lies.
Stock uneven_stock() {
    Stock stock;
    stock.name = "uneven";
    stock.paper = {mm(297), mm(210)};
    stock.margin = mm(5);
    stock.cells = CellGrid{3, 4, {mm(70), mm(30)}, false, {mm(8), mm(31)}, mm(81), mm(34)};
    return stock;
}

// As many labels as make a full sheet and a part of another; upright ones or lying ones on plain card.
std::vector<Trim> labels_for(const Stock& stock, Size on_card) {
    if (stock.laminate) on_card = {mm(50), mm(80)}; // goes into every pouch
    if (!stock.cells) return std::vector<Trim>(23, Trim{on_card, false, {}, mm(3)});
    const CellGrid& grid = *stock.cells;
    const auto count = static_cast<std::size_t>(grid.columns * grid.rows + 2);
    return std::vector<Trim>(count, Trim{grid.cell, grid.round, grid.corner, {}});
}

// Where a point of this side lies, seen from the front through the paper.
Point on_front(Side side, Point p, Size paper) {
    if (side == Side::back) return {paper.width - p.x, p.y};
    if (side == Side::back_of_pad) return {p.x, paper.height - p.y};
    return p;
}

void check_same(Point a, Point b) {
    CAPTURE(a.x.in_mm(), a.y.in_mm(), b.x.in_mm(), b.y.in_mm());
    CHECK((near(a.x, b.x) && near(a.y, b.y)));
}

DisplayList compose(const SheetPlan& plan, const std::vector<Trim>& labels, const Stock& stock, Side side) {
    std::vector<std::shared_ptr<const DisplayList>> lists;
    std::vector<Trim> trims;
    for (const Slot& slot : plan.slots) {
        lists.push_back(std::make_shared<DisplayList>(DisplayList{labels[slot.label].size, {}}));
        trims.push_back(labels[slot.label]);
    }
    return compose_sheet(plan, lists, trims, stock, side, DisplayList{{mm(80), mm(2.8)}, {}});
}

} // namespace

TEST_CASE("each label turns over like a page, on every bundled stock and whichever way the sheet turns", "[sheets]") {
    const Side side = GENERATE(Side::back, Side::back_of_pad);
    const Size on_card = GENERATE(Size{mm(54), mm(86)}, Size{mm(140), mm(50)}, Size{mm(50), mm(140)});
    const auto used = GENERATE(std::set<int>{}, std::set<int>{1, 4});
    auto stocks = bundled_stocks();
    stocks.push_back(uneven_stock());
    for (const Stock& stock : stocks) {
        CAPTURE(stock.name, side == Side::back, on_card.width.in_mm());
        const std::vector<Trim> labels = labels_for(stock, on_card);
        Diagnostics diagnostics;
        const auto plans = plan_sheets(labels, stock, {{}, stock.cells ? used : std::set<int>{}}, {}, diagnostics);
        REQUIRE(diagnostics.errors() == 0);
        REQUIRE(plans.size() >= 2);
        for (const SheetPlan& plan : plans) {
            const DisplayList front = compose(plan, labels, stock, Side::front);
            const DisplayList back = compose(plan, labels, stock, side);
            for (std::size_t i = 0; i < plan.slots.size(); ++i) {
                const Transform& before = std::get<Group>(front.items[i]).transform;
                const Transform& placed = std::get<Group>(back.items[i]).transform;
                if (plan.slots[i].turn == Turn::none) check_same(before.apply({}), plan.slots[i].origin);
                const Size size = labels[plan.slots[i].label].size;
                // Upright on the turned label: what is at the left of the back lies behind the right of the front.
                for (const Point p : {Point{}, Point{size.width, {}}, Point{{}, size.height}, Point{mm(7), mm(11)}}) {
                    check_same(on_front(side, placed.apply(p), plan.paper), before.apply({size.width - p.x, p.y}));
                }
            }
        }
    }
}

TEST_CASE("backs have a test line and no cut marks", "[sheets]") {
    const Side side = GENERATE(Side::back, Side::back_of_pad);
    for (const Stock& stock : bundled_stocks()) {
        if (stock.page_per_label) continue;
        CAPTURE(stock.name);
        const std::vector<Trim> labels = labels_for(stock, {mm(54), mm(86)});
        Diagnostics diagnostics;
        const SheetPlan plan = plan_sheets(labels, stock, {}, {}, diagnostics).at(0);
        const DisplayList back = compose(plan, labels, stock, side);
        REQUIRE(back.items.size() == plan.slots.size() + 1); // every label, and the test line
        const auto& line = std::get<Group>(back.items.back());
        CHECK(contains({{}, plan.paper}, line.transform.bounds({{}, line.list->size})));
    }
}
