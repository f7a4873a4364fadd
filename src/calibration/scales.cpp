#include "calibration/scales.h"

#include <cmath>

namespace dyeleaf {

namespace {

constexpr Length fine = pt(0.25);
constexpr Length plain = pt(0.5);
constexpr int half_millimetres = 40;

void stroke(DisplayList& sheet, Point from, Point to, Length width) {
    sheet.items.emplace_back(StrokePath{line_path(from, to), Rgb{}, width, {}});
}

// `along` from the middle in the way of the line, `aside` to the right of somebody who goes that way, which is below a
// line that goes across.
Point beside(Point middle, Way way, Length along, Length aside) {
    return way == Way::across ? middle + Point{along, aside} : middle + Point{-aside, along};
}

} // namespace

void draw_scale(DisplayList& sheet, Writing& writing, Point middle, Way way) {
    const Type type{pt(8), 500};
    stroke(sheet, beside(middle, way, mm(-10), {}), beside(middle, way, mm(10), {}), plain);
    for (int i = 0; i <= half_millimetres; ++i) {
        const Length along = mm(0.5 * i - 10);
        const bool is_five = i % 10 == 0;
        const Length reach = is_five ? mm(6) : i % 2 == 0 ? mm(4.2) : mm(2.6);
        stroke(sheet, beside(middle, way, along, {}), beside(middle, way, along, -reach), is_five ? plain : fine);
        if (!is_five) continue;
        const Point at = beside(middle, way, along, -reach - mm(1.2));
        const std::string figure = std::to_string(i / 2);
        if (way == Way::across) {
            writing.figure(figure, type, at, Against::middle);
        } else {
            writing.figure(figure, type, at + Point{{}, writing.cap_height(type) / 2}, Against::left);
        }
    }
}

void draw_ruler_line(DisplayList& sheet, Point middle, Length length) {
    const auto at = [&](Length along, Length aside) { return middle + Point{along - length / 2, aside}; };
    stroke(sheet, at({}, {}), at(length, {}), plain);
    const auto centimetres = static_cast<int>(std::lround(length.in_mm() / 10));
    for (int i = 0; i <= centimetres; ++i) {
        const bool is_end = i == 0 || i == centimetres;
        const Length up = is_end ? mm(4) : i % 5 == 0 ? mm(2.5) : mm(1.5);
        stroke(sheet, at(mm(10) * i, -up), at(mm(10) * i, is_end ? mm(4) : Length{}), plain);
    }
}

void draw_fold(DisplayList& sheet, Rect paper, Way way) {
    constexpr Rgb grey = {0.45, 0.45, 0.45};
    const Length length = way == Way::across ? paper.size.width : paper.size.height;
    const Length depth = way == Way::across ? paper.size.height : paper.size.width;
    // As if it went across; `aside` is measured from the middle of the sheet.
    const auto at = [&](double along, double aside) {
        return beside(paper.centre(), way, length * (along - 0.5), depth * aside);
    };
    sheet.items.emplace_back(StrokePath{rect_path(paper), grey, plain, {}});
    sheet.items.emplace_back(StrokePath{line_path(at(0.5, -0.5), at(0.5, 0.5)), Rgb{}, plain, {mm(1), mm(0.8)}});
    const Point tip = at(0.93, -0.02);
    sheet.items.emplace_back(
        StrokePath{{MoveTo{at(0.07, -0.02)}, CurveTo{at(0.2, -0.36), at(0.8, -0.36), tip}}, Rgb{}, pt(0.75), {}});
    const Point back = beside({}, way, -mm(0.6), -mm(2));
    const Point off = beside({}, way, -mm(1.9), -mm(0.6));
    sheet.items.emplace_back(FillPath{{MoveTo{tip}, LineTo{tip + back}, LineTo{tip + off}, ClosePath{}}, Rgb{}});
}

void draw_ring(DisplayList& sheet, Point middle, Length radius) {
    sheet.items.emplace_back(StrokePath{circle_path(middle, radius), Rgb{}, pt(1), {}});
}

void draw_cross(DisplayList& sheet, Point middle, Length reach) {
    stroke(sheet, middle - Point{reach, {}}, middle + Point{reach, {}}, pt(1));
    stroke(sheet, middle - Point{{}, reach}, middle + Point{{}, reach}, pt(1));
}

} // namespace dyeleaf
