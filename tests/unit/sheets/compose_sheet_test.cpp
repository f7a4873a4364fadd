#include "base/overloaded.h"
#include "sheets/impose.h"
#include "sheets/test_line.h"

#include <catch2/catch.hpp>

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

struct Stroke {
    Point from, to;
    Length width;
    // Ends are cut straight.
    [[nodiscard]] Rect ink() const {
        const Point least = {smaller(from.x, to.x), smaller(from.y, to.y)};
        const Point most = {larger(from.x, to.x), larger(from.y, to.y)};
        const Length beside_x = near(from.x, to.x) ? width / 2 : Length{};
        const Length beside_y = near(from.y, to.y) ? width / 2 : Length{};
        return {{least.x - beside_x, least.y - beside_y},
                {most.x - least.x + beside_x * 2, most.y - least.y + beside_y * 2}};
    }
    [[nodiscard]] Length length() const { return larger(ink().size.width, ink().size.height); }
};

// Every straight black stroke of the list and its groups, in sheet coordinates.
void collect(const DisplayList& list, const Transform& transform, std::vector<Stroke>& strokes) {
    for (const DisplayItem& item : list.items) {
        if (const auto* group = std::get_if<Group>(&item)) {
            collect(*group->list, transform.after(group->transform), strokes);
        } else if (const auto* stroke = std::get_if<StrokePath>(&item)) {
            if (stroke->path.size() != 2 || stroke->colour != Rgb{}) continue;
            strokes.push_back({transform.apply(std::get<MoveTo>(stroke->path[0]).to),
                               transform.apply(std::get<LineTo>(stroke->path[1]).to), stroke->width});
        }
    }
}

struct Composed {
    SheetPlan plan;
    DisplayList sheet;
    std::vector<Rect> trims; // on the front
    std::vector<Stroke> strokes;
    [[nodiscard]] std::vector<Stroke> test_lines() const {
        std::vector<Stroke> lines;
        for (const Stroke& stroke : strokes) {
            if (fits(mm(50), stroke.length())) lines.push_back(stroke);
        }
        return lines;
    }
};

Composed compose(const std::vector<Trim>& labels, const Stock& stock, Side side = Side::front) {
    Diagnostics diagnostics;
    Composed composed;
    composed.plan = plan_sheets(labels, stock, {}, {}, diagnostics).at(0);
    std::vector<std::shared_ptr<const DisplayList>> lists;
    std::vector<Trim> trims;
    for (const Slot& slot : composed.plan.slots) {
        lists.push_back(std::make_shared<DisplayList>(DisplayList{labels[slot.label].size, {}}));
        trims.push_back(labels[slot.label]);
        composed.trims.push_back({slot.origin, trims.back().size});
    }
    const DisplayList caption{{mm(80), mm(2.8)}, {}};
    composed.sheet = compose_sheet(composed.plan, lists, trims, stock, side, caption);
    collect(composed.sheet, {}, composed.strokes);
    return composed;
}

std::vector<Trim> labels(std::size_t count, double width, double height, double bleed = 0, bool round = false) {
    return std::vector<Trim>(count, Trim{{mm(width), mm(height)}, round, {}, mm(bleed)});
}

const Group& first_group(const DisplayList& sheet) {
    return std::get<Group>(sheet.items.at(0));
}

// The rectangle around a clip path's points.
Rect around(const Path& path) {
    std::vector<Point> points;
    for (const auto& step : path) {
        std::visit(Overloaded{[&](const MoveTo& move) { points.push_back(move.to); },
                              [&](const LineTo& line) { points.push_back(line.to); },
                              [&](const CurveTo& curve) { points.push_back(curve.to); }, [](const ClosePath&) {}},
                   step);
    }
    Point least = points.at(0);
    Point most = points.at(0);
    for (const Point& point : points) {
        least = {smaller(least.x, point.x), smaller(least.y, point.y)};
        most = {larger(most.x, point.x), larger(most.y, point.y)};
    }
    return {least, {most.x - least.x, most.y - least.y}};
}

void check_near(Rect a, Rect b) {
    CAPTURE(to_string(a), to_string(b));
    CHECK(contains(a, b));
    CHECK(contains(b, a));
}

} // namespace

TEST_CASE("no cut mark and no test line lies on a label", "[sheets]") {
    const double gap = GENERATE(0.0, 1.0, 2.0, 3.0, 6.0, 12.0);
    const bool round = GENERATE(false, true);
    CAPTURE(gap, round);
    Stock stock = card();
    stock.gap = mm(gap);
    std::vector<Trim> wanted = labels(12, 40, 40, 3, round);
    wanted.insert(wanted.end(), {{{mm(70), mm(33)}, round, {}, mm(3)}, {{mm(55), mm(48)}, round, {}, mm(3)}});
    const Composed composed = compose(wanted, stock);
    CHECK(composed.strokes.size() > wanted.size());
    for (const Stroke& stroke : composed.strokes) {
        for (const Rect& trim : composed.trims)
            CHECK_FALSE(overlap(stroke.ink(), trim));
    }
}

TEST_CASE("every label on plain card with a gap has eight corner marks on the lines of its cut", "[sheets]") {
    const Composed composed = compose(labels(8, 85, 55), card());
    for (const Rect& trim : composed.trims) {
        int marks = 0;
        for (const Stroke& stroke : composed.strokes) {
            if (fits(mm(4), stroke.length())) continue; // the test line
            const bool near_it = overlap(stroke.ink(), grown(trim, mm(2.9)));
            const bool lying = near(stroke.from.y, stroke.to.y);
            const bool on_cut = lying ? near(stroke.from.y, trim.top()) || near(stroke.from.y, trim.bottom())
                                      : near(stroke.from.x, trim.left()) || near(stroke.from.x, trim.right());
            if (near_it && on_cut) ++marks;
        }
        CHECK(marks == 8);
    }
}

TEST_CASE("a round label has its outline and a mark at each quarter", "[sheets]") {
    const Composed composed = compose(labels(1, 38, 38, 0, true), card());
    int outlines = 0;
    for (const DisplayItem& item : composed.sheet.items) {
        const auto* stroke = std::get_if<StrokePath>(&item);
        if (stroke != nullptr && stroke->path.size() > 2) {
            ++outlines;
            check_near(around(stroke->path), composed.trims[0]);
        }
    }
    CHECK(outlines == 1);
    const auto quarter = [&](const Stroke& stroke) { return near(stroke.length(), mm(2.5)); };
    CHECK(std::count_if(composed.strokes.begin(), composed.strokes.end(), quarter) == 4);
}

TEST_CASE("the test line is exactly 100 mm long, with a tick at every centimetre", "[sheets]") {
    const Composed composed = compose(labels(8, 85, 55), card());
    const auto lines = composed.test_lines();
    REQUIRE(lines.size() == 1);
    CHECK(lines[0].to.x - lines[0].from.x == mm(100));
    for (int centimetre = 0; centimetre <= 10; ++centimetre) {
        const Length x = lines[0].from.x + mm(10) * centimetre;
        const auto is_tick = [&](const Stroke& stroke) {
            return near(stroke.from.x, x) && near(stroke.to.x, x) && overlap(stroke.ink(), lines[0].ink());
        };
        CHECK(std::count_if(composed.strokes.begin(), composed.strokes.end(), is_tick) == 1);
    }
}

TEST_CASE("the test line is clear of the margin and of every cell", "[sheets]") {
    struct Case {
        std::string what;
        CellGrid grid;
        bool upright;
    };
    const Case known = GENERATE(values<Case>({
        {"room at the bottom", {3, 7, {mm(60), mm(38)}, false, {mm(10), mm(15)}, mm(65), mm(38)}, false},
        {"room at the top only", {2, 4, {mm(98), mm(68)}, false, {mm(6), mm(20)}, mm(98), mm(68)}, false},
        {"room at the left only", {1, 4, {mm(185), mm(72)}, false, {mm(20), mm(5)}, mm(185), mm(72)}, true},
        {"room at the right only", {1, 4, {mm(185), mm(72)}, false, {mm(5), mm(5)}, mm(185), mm(72)}, true},
        {"room between rows", {2, 2, {mm(100), mm(138)}, false, {mm(5), mm(5)}, mm(100), mm(149)}, false},
        {"a thin strip", {1, 4, {mm(200), mm(70)}, false, {mm(5), mm(5)}, mm(200), mm(71.2)}, false},
    }));
    CAPTURE(known.what);
    Stock stock = card();
    stock.margin = mm(5);
    stock.cells = known.grid;
    const Side side = GENERATE(Side::front, Side::back);
    const Composed composed =
        compose(labels(1, known.grid.cell.width.in_mm(), known.grid.cell.height.in_mm()), stock, side);
    const auto lines = composed.test_lines();
    REQUIRE(lines.size() == 1);
    CHECK(near(lines[0].length(), mm(100)));
    CHECK(near(lines[0].from.x, lines[0].to.x) == known.upright);
    for (const Stroke& stroke : composed.strokes) {
        CHECK(contains(grown({{}, stock.paper}, -(stock.margin - stroke.width / 2)), stroke.ink()));
        for (int row = 0; row < known.grid.rows; ++row) {
            for (int column = 0; column < known.grid.columns; ++column) {
                Rect cell{known.grid.first + Point{known.grid.across * column, known.grid.down * row}, known.grid.cell};
                if (side == Side::back) cell.origin.x = stock.paper.width - cell.right();
                CHECK_FALSE(overlap(stroke.ink(), cell));
            }
        }
    }
}

TEST_CASE("the caption stands under the test line, or after it in a thin strip", "[sheets]") {
    const DisplayList caption{{mm(80), mm(2.8)}, {}};
    const auto caption_place = [&](const TestBand& band) {
        const Group group = draw_test_line(band, caption);
        const Group& inner = std::get<Group>(group.list->items.back());
        return group.transform.after(inner.transform).bounds({{}, caption.size});
    };
    const auto deep = find_test_band({mm(210), mm(297)}, mm(5), {{{mm(5), mm(5)}, {mm(200), mm(278)}}}, mm(2.8));
    REQUIRE(deep);
    CHECK(fits(mm(286), caption_place(*deep).top()));
    CHECK(contains({{mm(5), mm(5)}, {mm(200), mm(287)}}, caption_place(*deep)));

    const auto thin = find_test_band({mm(210), mm(297)}, mm(5), {{{mm(5), mm(5)}, {mm(200), mm(283.5)}}}, mm(2.8));
    REQUIRE(thin);
    CHECK(near(thin->rect.size.height, mm(3)));
    CHECK(contains({{mm(5), mm(288.5)}, {mm(200), mm(3.5)}}, caption_place(*thin)));
}

TEST_CASE("artwork is clipped to the trim and as much bleed as the gap leaves", "[sheets]") {
    Stock stock = card();
    check_near(around(*first_group(compose(labels(2, 40, 60, 2), stock).sheet).clip),
               {{mm(-2), mm(-2)}, {mm(44), mm(64)}});
    check_near(around(*first_group(compose(labels(2, 40, 60, 5), stock).sheet).clip),
               {{mm(-3), mm(-3)}, {mm(46), mm(66)}});
    check_near(around(*first_group(compose(labels(2, 40, 60), stock).sheet).clip), {{}, {mm(40), mm(60)}});
    check_near(around(*first_group(compose(labels(2, 40, 40, 1, true), stock).sheet).clip),
               {{mm(-1), mm(-1)}, {mm(42), mm(42)}});
}

TEST_CASE("artwork never bleeds from one cell into the next", "[sheets]") {
    Stock stock = card();
    stock.cells = CellGrid{3, 6, {mm(60), mm(38)}, false, {mm(10), mm(15)}, mm(62), mm(44)};
    check_near(around(*first_group(compose(labels(1, 60, 38, 3), stock).sheet).clip),
               {{mm(-1), mm(-1)}, {mm(62), mm(40)}});
}

TEST_CASE("cells have no cut marks", "[sheets]") {
    Stock stock = card();
    stock.cells = CellGrid{3, 7, {mm(60), mm(38)}, false, {mm(10), mm(15)}, mm(65), mm(38)};
    CHECK(compose(labels(21, 60, 38), stock).strokes.size() == 12); // the test line and its eleven ticks
}

namespace {

// Every straight line of the cut's colours, grey ones too, in the sheet's own list: the test line is in a group.
std::vector<Stroke> cuts(const DisplayList& sheet) {
    std::vector<Stroke> strokes;
    for (const DisplayItem& item : sheet.items) {
        const auto* stroke = std::get_if<StrokePath>(&item);
        if (stroke == nullptr || stroke->path.size() != 2) continue;
        strokes.push_back({std::get<MoveTo>(stroke->path[0]).to, std::get<LineTo>(stroke->path[1]).to, stroke->width});
    }
    return strokes;
}

} // namespace

TEST_CASE("full lines run along every edge across the sheet, and on no label", "[sheets]") {
    Stock stock = card();
    stock.cut = Cut::full_lines;
    stock.may_turn = false;
    const Composed composed = compose(labels(3, 85, 55), stock); // two in the first row, one in the second
    const std::vector<Stroke> lines = cuts(composed.sheet);
    for (const Stroke& line : lines) {
        CHECK(fits(pt(0.25), line.width));
        CHECK(contains({{mm(6), mm(6)}, {mm(198), mm(276)}}, line.ink()));
        for (const Rect& trim : composed.trims)
            CHECK_FALSE(overlap(line.ink(), trim));
    }
    for (const Rect& trim : composed.trims) {
        for (const Rect& side : {Rect{{trim.left() - mm(0.1), trim.top()}, {mm(0.1), trim.size.height}},
                                 Rect{{trim.right(), trim.top()}, {mm(0.1), trim.size.height}},
                                 Rect{{trim.left(), trim.top() - mm(0.1)}, {trim.size.width, mm(0.1)}},
                                 Rect{{trim.left(), trim.bottom()}, {trim.size.width, mm(0.1)}}}) {
            const bool upright = side.size.width < side.size.height;
            const auto runs_along = [&](const Stroke& line) {
                const Rect ink = line.ink();
                return upright ? overlap(ink, side) && fits(ink.top(), side.top()) && fits(side.bottom(), ink.bottom())
                               : overlap(ink, side) && fits(ink.left(), side.left()) && fits(side.right(), ink.right());
            };
            CHECK(std::any_of(lines.begin(), lines.end(), runs_along));
        }
    }
    // Four upright lines from the printer's edge to above the test line, the right two over the free place as well.
    const auto whole = [](const Stroke& line) { return near(line.from.x, line.to.x) && near(line.to.y, mm(282)); };
    CHECK(std::count_if(lines.begin(), lines.end(), whole) == 4);
}

TEST_CASE("full lines of labels of different sizes keep to their own label", "[sheets]") {
    Stock stock = card();
    stock.cut = Cut::full_lines;
    std::vector<Trim> wanted = labels(1, 60, 50);
    wanted.push_back({{mm(40), mm(30)}, false, {}, {}});
    const Composed composed = compose(wanted, stock);
    const std::vector<Stroke> lines = cuts(composed.sheet);
    CHECK(lines.size() == 8);
    for (const Stroke& line : lines) {
        const auto is_near = [&](const Rect& trim) { return contains(grown(trim, mm(3)), line.ink()); };
        CHECK(std::any_of(composed.trims.begin(), composed.trims.end(), is_near));
    }
}

TEST_CASE("full lines stop at colour that runs past the edge", "[sheets]") {
    Stock stock = card();
    stock.cut = Cut::full_lines;
    const Composed composed = compose(labels(4, 60, 50, 2), stock);
    const std::vector<Stroke> lines = cuts(composed.sheet);
    CHECK_FALSE(lines.empty());
    for (const Stroke& line : lines) {
        for (const Rect& trim : composed.trims)
            CHECK_FALSE(overlap(line.ink(), grown(trim, mm(2))));
    }
}

TEST_CASE("single cuts have one mark at either end, outside all labels", "[sheets]") {
    Stock stock = card();
    stock.cut = Cut::single_cuts;
    stock.gap = {};
    stock.may_turn = false;
    const Composed composed = compose(labels(5, 60, 50), stock); // three across, two down
    const std::vector<Stroke> marks = cuts(composed.sheet);
    CHECK(marks.size() == 2 * (4 + 3));
    const Point first = composed.trims[0].origin;
    const Rect block = {first, {mm(180), mm(100)}};
    for (const Stroke& mark : marks) {
        CHECK(near(mark.length(), mm(5)));
        CHECK(mark.width == pt(0.25));
        CHECK_FALSE(overlap(mark.ink(), block));
        CHECK(contains({{mm(6), mm(6)}, {mm(198), mm(276)}}, mark.ink()));
    }
    for (int column = 0; column <= 3; ++column) {
        const Length x = first.x + mm(60) * column;
        const auto on_cut = [&](const Stroke& mark) { return near(mark.from.x, x) && near(mark.to.x, x); };
        CHECK(std::count_if(marks.begin(), marks.end(), on_cut) == 2);
    }
    CHECK(composed.test_lines().size() == 1);
}

TEST_CASE("a narrow label on a roll has lines along its sides, one on ready-cut labels has none", "[sheets]") {
    Stock stock;
    stock.page_per_label = true;
    stock.roll = Roll{mm(62), std::nullopt};
    const Composed narrow = compose(labels(1, 50, 90), stock);
    const std::vector<Stroke> lines = cuts(narrow.sheet);
    REQUIRE(lines.size() == 2); // the page ends where the label does
    for (const Stroke& line : lines) {
        CHECK(near(line.length(), mm(90)));
        CHECK_FALSE(overlap(line.ink(), narrow.trims[0]));
    }
    CHECK(cuts(compose(labels(1, 62, 90), stock).sheet).empty());
    stock.roll->length = mm(100);
    CHECK(cuts(compose(labels(1, 50, 90), stock).sheet).empty());
}

TEST_CASE("a label that lies along a roll reads from its top to its bottom end", "[sheets]") {
    Stock stock;
    stock.page_per_label = true;
    stock.roll = Roll{mm(62), std::nullopt};
    const Composed turned = compose(labels(1, 90, 50), stock);
    const Transform& placed = first_group(turned.sheet).transform;
    const Point top_left = placed.apply({});
    const Point top_right = placed.apply({mm(90), {}});
    CHECK((near(top_left.x, mm(56)) && near(top_left.y, mm(0))));
    CHECK((near(top_right.x, mm(56)) && near(top_right.y, mm(90))));
}

TEST_CASE("a page per label holds the label with its bleed and nothing else", "[sheets]") {
    Stock stock;
    stock.page_per_label = true;
    const Composed composed = compose(labels(1, 62, 29, 3), stock);
    CHECK(composed.sheet.size == Size{mm(68), mm(35)});
    CHECK(composed.sheet.items.size() == 1);
    check_near(around(*first_group(composed.sheet).clip), {{mm(-3), mm(-3)}, {mm(68), mm(35)}});
    CHECK(first_group(composed.sheet).transform.dx == mm(3));
}

TEST_CASE("a page per label with cut marks has room for them outside the bleed", "[sheets]") {
    Stock stock;
    stock.page_per_label = true;
    stock.page_marks = true;
    const Composed composed = compose(labels(1, 62, 29, 3), stock);
    CHECK(composed.sheet.size == Size{mm(62 + 20), mm(29 + 20)}); // 3 mm bleed, 1 mm off it, 5 mm long, 1 mm to spare
    CHECK(composed.strokes.size() == 8);
    const Rect bleed{{mm(7), mm(7)}, {mm(68), mm(35)}};
    for (const Stroke& mark : composed.strokes)
        CHECK_FALSE(overlap(mark.ink(), bleed));
}

TEST_CASE("the back is the front seen through the paper", "[sheets]") {
    Stock stock = card();
    stock.cells = CellGrid{2, 2, {mm(60), mm(40)}, false, {mm(10), mm(20)}, mm(80), mm(50)};
    const Composed front = compose(labels(3, 60, 40), stock);
    const Composed back = compose(labels(3, 60, 40), stock, Side::back);
    for (std::size_t i = 0; i < 3; ++i) {
        const Transform& on_front = std::get<Group>(front.sheet.items[i]).transform;
        const Transform& on_back = std::get<Group>(back.sheet.items[i]).transform;
        CHECK(near(on_back.dx, mm(210) - on_front.dx - mm(60)));
        CHECK(near(on_back.dy, on_front.dy));
        CHECK(on_back.a == 1.0); // words still read from left to right
    }
}

TEST_CASE("a sector is clipped to its shape and outlined for the knife, in cells as well", "[sheets]") {
    const Sector sector{mm(80), mm(120), 0.8, true};
    Trim trim{sector.bounds(), false, {}, {}};
    trim.sector = sector;
    Stock stock = card();
    if (GENERATE(false, true))
        stock.cells = CellGrid{1, 2, {mm(150), mm(60)}, false, {mm(10), mm(10)}, mm(150), mm(70)};
    const Composed composed = compose({trim}, stock);
    const Group& label = first_group(composed.sheet);
    check_near(around(*label.clip), {{}, sector.bounds()});
    const Group& outline = std::get<Group>(composed.sheet.items.at(1));
    REQUIRE(std::holds_alternative<StrokePath>(outline.list->items.at(0)));
    check_near(around(std::get<StrokePath>(outline.list->items.at(0)).path), {{}, sector.bounds()});
    CHECK(outline.transform.dx == composed.trims[0].left());
    for (const Stroke& stroke : composed.strokes)
        CHECK_FALSE(overlap(stroke.ink(), composed.trims[0]));
}

TEST_CASE("clipped corners are clipped and outlined", "[sheets]") {
    Trim trim{{mm(40), mm(60)}, false, {}, {}};
    trim.clipped = mm(8);
    const Composed composed = compose({trim}, card());
    const Path& clip = *first_group(composed.sheet).clip;
    REQUIRE(clip.size() == 7);
    CHECK(std::get<MoveTo>(clip[0]).to == Point{mm(8), {}});
    CHECK(std::get<LineTo>(clip[5]).to == Point{{}, mm(8)});
    const auto& items = composed.sheet.items; // the last one is the test line
    const Group& outline = std::get<Group>(items.at(items.size() - 2));
    const auto* line = std::get_if<StrokePath>(&outline.list->items.at(0));
    REQUIRE(line != nullptr);
    CHECK(line->path.size() == 7);
    CHECK(outline.transform.dx == composed.trims[0].left());
}
