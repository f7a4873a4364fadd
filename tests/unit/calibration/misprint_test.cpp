// A printer is played that misprints, and what dyeleaf sends it must land where it was meant to.
#include "calibration/corrected_page.h"
#include "calibration/misprint.h"
#include "display/display_list.h"

#include <catch2/catch.hpp>

using namespace dyeleaf;

namespace {

constexpr Size a4 = {mm(210), mm(297)};

void check_same(Point a, Point b) {
    CAPTURE(a.x.in_mm(), a.y.in_mm(), b.x.in_mm(), b.y.in_mm());
    CHECK(std::abs((a.x - b.x).in_mm()) < 1e-9);
    CHECK(std::abs((a.y - b.y).in_mm()) < 1e-9);
}

// Shifts a page by `by` and stretches it about the middle of the paper.
struct Play {
    Point by;
    double across = 1, down = 1;
    [[nodiscard]] Point operator()(Point p, Size paper) const {
        const Point c = Rect{{}, paper}.centre();
        return {c.x + (p.x - c.x) * across + by.x, c.y + (p.y - c.y) * down + by.y};
    }
};

// Behind a point of the front when the sheet is turned like a page, and the same upside down.
Point like_a_page(Point p, Size paper) {
    return {paper.width - p.x, p.y};
}
Point upside_down(Point p, Size paper) {
    return {paper.width - p.x, paper.height - p.y};
}

constexpr Play front_play = {{mm(0.8), mm(-1.3)}, 0.996, 1.002};
constexpr Play back_play = {{mm(-0.6), mm(2.1)}, 0.996, 1.002};

// Where a point of a page of `size` lands on the paper, as the reader sees that side of it, who turned it like a page.
// The driver lets the printer print a page for the short edge upside down; by hand the printer sees a first side.
Point landed(Passage passage, Point p, Size size) {
    switch (passage) {
    case Passage::front:
    case Passage::by_hand: return front_play(p, size);
    case Passage::long_edge: return back_play(p, size);
    case Passage::short_edge: break;
    }
    return back_play(upside_down(p, size), size);
}

// What the dyer reads: where the middle of the paper lies on the scales, whose 10 mm are the middle of the page.
Misprint readings(Passage passage, Play play) {
    const Point c = Rect{{}, a4}.centre();
    // The tick at r lands where the play puts c + r - 10; it is read where that is c.
    const Length across = mm(10) - play.by.x / play.across;
    const Length down = mm(10) - play.by.y / play.down;
    check_same(landed(passage, c + Point{across - mm(10), down - mm(10)}, a4), c);
    Misprint misprint = misprint_of_readings(across, down);
    misprint.across = play(c + Point{mm(75), {}}, a4).x / mm(150) - play(c - Point{mm(75), {}}, a4).x / mm(150);
    misprint.down = play(c + Point{{}, mm(100)}, a4).y / mm(200) - play(c - Point{{}, mm(100)}, a4).y / mm(200);
    return misprint;
}

Measured measured() {
    return {readings(Passage::front, front_play), readings(Passage::long_edge, back_play), false};
}

constexpr std::array points = {Point{}, Point{mm(210), mm(297)}, Point{mm(17), mm(280)}, Point{mm(105), mm(148.5)}};

} // namespace

TEST_CASE("a misprint and its correction undo each other", "[calibration]") {
    const Misprint misprint =
        GENERATE(Misprint{}, Misprint{{mm(1.5), mm(-2.25)}, 0.97, 1.031}, Misprint{{mm(-10), mm(10)}, 1.05, 0.95});
    for (const Point p : points) {
        check_same(as_printed(misprint, a4).apply(correction(misprint, a4).apply(p)), p);
        check_same(correction(misprint, a4).apply(as_printed(misprint, a4).apply(p)), p);
    }
}

TEST_CASE("a reading right of the middle of the scale says that the print lies left", "[calibration]") {
    const Misprint misprint = misprint_of_readings(mm(10.5), mm(9));
    check_same(as_printed(misprint, a4).apply({mm(105), mm(148.5)}), {mm(104.5), mm(149.5)});
    CHECK(misprint_of_readings(mm(10), mm(10)) == Misprint{});
}

TEST_CASE("a corrected page lands where it was meant to, however it comes onto the paper", "[calibration]") {
    const Passage passage = GENERATE(Passage::front, Passage::by_hand, Passage::long_edge, Passage::short_edge);
    const auto found = misprint(measured(), passage);
    REQUIRE(found);
    for (const Point p : points) {
        const Point meant = passage == Passage::short_edge ? upside_down(p, a4) : p;
        check_same(landed(passage, correction(*found, a4).apply(p), a4), meant);
    }
}

TEST_CASE("what was not measured is not corrected", "[calibration]") {
    Measured known = measured();
    known.back_by_hand = true;
    CHECK_FALSE(misprint(known, Passage::long_edge));
    CHECK_FALSE(misprint(known, Passage::short_edge));
    CHECK(misprint(known, Passage::by_hand) == known.back);
    known.back.reset();
    CHECK_FALSE(misprint(known, Passage::long_edge));
    CHECK(misprint(known, Passage::by_hand) == known.front);
    known = measured();
    CHECK(misprint(known, Passage::by_hand) == known.front);
}

// The paper stands while it is printed, and the reader turns it to read. Labels that lie behind each other on the pages
// must do so on the paper.
TEST_CASE("fronts and backs of a sheet that lies meet on the paper", "[calibration]") {
    const Size lies = {mm(297), mm(210)};
    const bool short_edge = GENERATE(true, false);
    const Passage passage = short_edge ? Passage::short_edge : Passage::long_edge;
    const auto onto_paper = [&](Passage how, Point p) {
        const DisplayList page = corrected(DisplayList{lies, {}}, *misprint(measured(), how));
        REQUIRE(page.size == a4);
        return landed(how, std::get<Group>(page.items.at(0)).transform.apply(p), a4);
    };
    for (const Point p : {Point{mm(20), mm(30)}, Point{mm(250), mm(190)}}) {
        // Sheets that lie turn like a page about their short edge, like the sheet of a pad about their long one.
        const Point behind = short_edge ? Point{lies.width - p.x, p.y} : Point{p.x, lies.height - p.y};
        check_same(like_a_page(onto_paper(passage, behind), a4), onto_paper(Passage::front, p));
    }
}

TEST_CASE("a page that stands keeps its ink, moved", "[calibration]") {
    DisplayList page{a4, {StrokePath{line_path({mm(10), mm(10)}, {mm(110), mm(10)}), Rgb{}, pt(0.5), {}}}};
    const DisplayList moved = corrected(page, {{mm(1), {}}, 0.99, 1});
    const auto& group = std::get<Group>(moved.items.at(0));
    REQUIRE(group.list->items.size() == 1);
    // 100 mm on the page of a printer that makes 99 of them.
    CHECK(group.transform.bounds({{mm(10), mm(10)}, {mm(100), {}}}).size.width.in_mm() == Approx(100 / 0.99));
}
