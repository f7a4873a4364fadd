#include "calibration/measuring_sheet.h"

#include "base/words.h"
#include "calibration/scales.h"
#include "calibration/writing.h"

#include <array>
#include <memory>
#include <utility>

namespace dyeleaf {

namespace {

// The block in which everything lies, and how large type is.
struct Frame {
    Length left, right, top, bottom;
    double type = 1;

    explicit Frame(Size paper) {
        const bool small = !fits(mm(190), paper.width);
        const Length rim = small ? mm(10) : mm(15);
        const Length width = smaller(paper.width - rim * 2, mm(180));
        left = (paper.width - width) / 2;
        right = left + width;
        top = rim;
        bottom = paper.height - rim;
        if (small) type = 0.78;
    }
    [[nodiscard]] Type body() const { return {pt(9) * type}; }
    [[nodiscard]] Type strong() const { return {pt(9) * type, 600}; }
    [[nodiscard]] Type title() const { return {pt(20) * type, 600, 1.2}; }
    [[nodiscard]] Type quiet() const { return {pt(8) * type}; }
};

constexpr Length letter_height = mm(10);
constexpr Length ruler_inset = mm(4); // of the line down from the right side

// F or B, `at` its middle.
void draw_letter(Writing& writing, const std::string& letter, Point at) {
    Type type{mm(10), 700};
    type.size = type.size * (letter_height / writing.cap_height(type));
    writing.figure(letter, type, at + Point{{}, letter_height / 2}, Against::middle);
}

Point letter_place(Size paper) {
    const Frame frame{paper};
    return {frame.left + mm(4), frame.top + letter_height / 2};
}

Point behind(Point p, Size paper) {
    return {paper.width - p.x, p.y};
}

// The two scales with the names by which their readings are recorded.
void draw_scales(DisplayList& sheet, Writing& writing, const std::string& side) {
    const Frame frame{sheet.size};
    const auto [across, down] = scale_places(sheet.size);
    draw_scale(sheet, writing, across, Way::across);
    writing.paragraph(side + ": across", frame.strong(), across + Point{{}, mm(1.5)}, mm(40), Against::middle);
    const Size folded = {mm(13), mm(13) * (sheet.size.height / sheet.size.width)};
    draw_fold(sheet, {across + Point{mm(17), -folded.height / 2 - mm(3)}, folded}, Way::across);
    draw_fold(sheet, {down + Point{mm(17), -folded.height / 2}, folded}, Way::down);
    draw_scale(sheet, writing, down, Way::down);
    writing.paragraph(side + ": down", frame.strong(), down + Point{-mm(2.5), -mm(2)}, mm(40), Against::right);
}

// Numbered paragraphs below one another; returns where they end.
Length write_steps(Writing& writing, const Frame& frame, const std::vector<std::string>& steps, int first, Point at,
                   Length width) {
    const Length indent = mm(6) * frame.type;
    for (const std::string& step : steps) {
        writing.figure(std::to_string(first++), frame.strong(),
                       at +
                           Point{{}, (frame.body().size * frame.body().leading + writing.cap_height(frame.body())) / 2},
                       Against::left);
        at.y += writing.paragraph(step, frame.body(), at + Point{indent, {}}, width - indent) + mm(2.2) * frame.type;
    }
    return at.y;
}

std::string other_way(Passage passage) {
    return passage == Passage::short_edge ? "long-edge" : "short-edge";
}

std::string how_to_turn(const MeasuringSheet& sheet, const Language& language) {
    if (sheet.passage == Passage::by_hand) return language.say("measuring.by hand");
    const bool is_short = sheet.passage == Passage::short_edge;
    const std::string edge = language.say(is_short ? "sheet.short edge" : "sheet.long edge");
    return language.say("measuring.two sided", {{"edge", edge}});
}

std::string if_upside_down(const MeasuringSheet& sheet, const Language& language) {
    if (sheet.passage == Passage::by_hand) return language.say("measuring.upside down by hand");
    return language.say("measuring.upside down", {{"option", "--backs " + other_way(sheet.passage)}});
}

// The record as it is typed, in every language, with blanks for what is read.
void draw_form(DisplayList& list, Writing& writing, const MeasuringSheet& sheet, Point at) {
    const Frame frame{list.size};
    const Type type = frame.body();
    const Length leading = pt(17) * frame.type;
    const Length blank = mm(18) * frame.type;
    const Length step = mm(5) * frame.type;
    const auto write = [&](const std::string& text, Point& where) {
        writing.figure(text, type, where, Against::left);
        where.x += writing.width_of(text, type) + mm(1);
    };
    const auto leave = [&](Length width, Point& where) {
        list.items.emplace_back(
            StrokePath{line_path(where + Point{{}, mm(0.8)}, where + Point{width, mm(0.8)}), Rgb{}, pt(0.5), {}});
        where.x += width + mm(1);
    };
    Point line = at;
    write("printers:", line);
    const auto next = [&](Length indent) { line = {at.x + indent, line.y + leading}; };
    const auto word = [&](const std::string& key, const std::string& value) {
        write(key + ":", line);
        if (value.empty()) {
            leave(blank * 2, line);
        } else {
            write(value, line);
        }
    };
    next(step);
    word("- printer", sheet.printer);
    const Length below_dash = step + writing.width_of("- ", type);
    next(below_dash);
    word("tray", sheet.tray);
    for (const auto& [key, value] : {std::pair{"paper", sheet.paper}, std::pair{"backs", sheet.backs}}) {
        next(below_dash);
        word(key, value);
    }
    for (const std::string key : {"front", "back", "lines"}) {
        next(below_dash);
        write(key + ": {across:", line);
        leave(blank, line);
        write("mm, down:", line);
        leave(blank, line);
        write("mm}", line);
    }
}

} // namespace

ScalePlaces scale_places(Size paper) {
    const Point middle = Rect{{}, paper}.centre();
    return {{middle.x, middle.y - mm(24)}, {middle.x - mm(30), middle.y}};
}

RingPlaces ring_places(Size paper) {
    const Frame frame{paper};
    return {letter_place(paper) + Point{mm(9), {}}, {frame.right - ruler_inset, frame.bottom - mm(3)}};
}

DisplayList draw_measuring_front(const MeasuringSheet& sheet, const Language& language, const Typesetter& typesetter) {
    DisplayList list{sheet.size, {}};
    Writing writing{list, typesetter};
    const Frame frame{sheet.size};
    const Point middle = Rect{{}, sheet.size}.centre();
    const Size lines = line_lengths(sheet.size);

    draw_letter(writing, "F", letter_place(sheet.size));
    const Length head = frame.left + mm(20);
    Length y = frame.top - mm(1);
    y += writing.paragraph(language.say("measuring.title"), frame.title(), {head, y}, frame.right - head);
    const std::string under =
        sheet.proof ? language.say("measuring.proof", {{"printer", sheet.printer}}) : language.say("measuring.about");
    writing.paragraph(under, frame.quiet(), {head, y}, frame.right - head);

    const Length steps_top = frame.top + letter_height + mm(7);
    const Length text_right = frame.right - mm(14);
    const Length gap = mm(8);
    const Length column = (text_right - frame.left - gap) / 2;
    write_steps(writing, frame,
                {language.say("measuring.print", {{"turn", how_to_turn(sheet, language)}}),
                 language.say("measuring.turn", {{"upside down", if_upside_down(sheet, language)}}),
                 language.say("measuring.window")},
                1, {frame.left, steps_top}, column);
    write_steps(writing, frame,
                {language.say("measuring.fold"), language.say("measuring.measure"), language.say("measuring.write")}, 4,
                {frame.left + column + gap, steps_top}, column);

    draw_scales(list, writing, "front");
    if (!sheet.proof) draw_form(list, writing, sheet, {frame.left, middle.y + mm(38)});

    const Point across{middle.x, frame.bottom - mm(14)};
    draw_ruler_line(list, across, lines.width, Way::across);
    writing.paragraph("lines: across", frame.strong(), across + Point{-lines.width / 2 + mm(1.5), mm(1)}, mm(60));
    writing.paragraph(to_string(lines.width), frame.body(), across + Point{lines.width / 2 - mm(1.5), mm(1)}, mm(30),
                      Against::right);
    const Point down{frame.right - ruler_inset, middle.y};
    draw_ruler_line(list, down, lines.height, Way::down);
    writing.paragraph("lines: down", frame.strong(), down + Point{-mm(2), lines.height / 2 - mm(12)}, mm(60),
                      Against::right);
    writing.paragraph(to_string(lines.height), frame.body(), down + Point{-mm(2), lines.height / 2 - mm(7)}, mm(30),
                      Against::right);

    for (const Point ring : {ring_places(sheet.size).first, ring_places(sheet.size).second})
        draw_ring(list, ring, ring_radius);
    return list;
}

DisplayList draw_measuring_back(const MeasuringSheet& sheet, const Language& language, const Typesetter& typesetter) {
    DisplayList list{sheet.size, {}};
    Writing writing{list, typesetter};
    const Frame frame{sheet.size};
    draw_letter(writing, "B", behind(letter_place(sheet.size), sheet.size));
    const Length text_width = frame.right - frame.left - mm(24);
    Length y = frame.top - mm(1);
    y += writing.paragraph(language.say("measuring.back title"), frame.title(), {frame.left, y}, text_width);
    writing.paragraph(how_to_turn(sheet, language), frame.quiet(), {frame.left, y}, text_width);
    y = frame.top + letter_height + mm(7);
    y += writing.paragraph(language.say("measuring.back reading"), frame.body(), {frame.left, y}, text_width) + mm(2);
    writing.paragraph(if_upside_down(sheet, language), frame.body(), {frame.left, y}, text_width);
    draw_scales(list, writing, "back");
    for (const Point ring : {ring_places(sheet.size).first, ring_places(sheet.size).second})
        draw_cross(list, behind(ring, sheet.size), ring_radius);

    if (sheet.passage != Passage::short_edge) return list;
    const Transform on_its_head = turned(Turn::half, sheet.size);
    return {sheet.size, {Group{std::make_shared<DisplayList>(std::move(list)), on_its_head, std::nullopt}}};
}

} // namespace dyeleaf
