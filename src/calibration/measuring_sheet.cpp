#include "calibration/measuring_sheet.h"

#include "base/words.h"
#include "calibration/scales.h"
#include "text/writing.h"

#include <array>
#include <memory>
#include <utility>
#include <vector>

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
        if (small) type = 0.72;
    }
    // Left of the line down.
    [[nodiscard]] Length text_right() const { return right - mm(14); }
    [[nodiscard]] Length scales_apart() const { return type < 1 ? mm(42) : mm(52); }
    [[nodiscard]] Type body() const { return {pt(10) * type}; }
    [[nodiscard]] Type strong() const { return {pt(10) * type, 600}; }
    [[nodiscard]] Type title() const { return {pt(20) * type, 600, 1.2}; }
    [[nodiscard]] Type quiet() const { return {pt(9) * type}; }
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
    draw_fold(sheet, {{across.x + mm(16), down.y - folded.height / 2}, folded}, Way::across);
    draw_fold(sheet, {down + Point{mm(13), -folded.height / 2}, folded}, Way::down);
    draw_scale(sheet, writing, down, Way::down);
    writing.paragraph(side + ": down", frame.strong(), down + Point{-mm(2.5), -mm(2)}, mm(40), Against::right);
}

// A line for the ruler with its name and length below it; the middle of the line is the middle of the list.
DisplayList ruler_line(Length length, const std::string& name, const Frame& frame, const Typesetter& typesetter) {
    DisplayList list{{length, mm(16)}, {}};
    const Point middle = Rect{{}, list.size}.centre();
    draw_ruler_line(list, middle, length);
    Writing writing{list, typesetter};
    const Point below = middle + Point{{}, mm(1)};
    writing.paragraph(name, frame.strong(), below - Point{length / 2 - mm(1.5), {}}, mm(60));
    writing.paragraph(to_string(length), frame.body(), below + Point{length / 2 - mm(1.5), {}}, mm(30), Against::right);
    return list;
}

void place(DisplayList& sheet, const DisplayList& list, Point middle, Turn turn) {
    const Point centre = Rect{{}, turned_size(turn, list.size)}.centre();
    sheet.items.emplace_back(Group{std::make_shared<DisplayList>(list),
                                   Transform::move(middle - centre).after(turned(turn, list.size)), std::nullopt});
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
class Form {
  public:
    Form(DisplayList& list, Writing& writing, const Frame& frame, Point at)
        : list_(&list), writing_(&writing), type_(frame.body()), leading_(pt(19) * frame.type),
          blank_(mm(20) * frame.type), left_(at.x), line_(at) {}

    void next_line(Length indent) { line_ = {left_ + indent, line_.y + leading_}; }
    void write(const std::string& text) {
        writing_->figure(text, type_, line_, Against::left);
        line_.x += width_of(text) + mm(1);
    }
    void leave(double blanks) {
        const Point start = line_ + Point{{}, mm(0.9)};
        const Length width = blank_ * blanks;
        list_->items.emplace_back(StrokePath{line_path(start, start + Point{width, {}}), Rgb{}, pt(0.5), {}});
        line_.x += width + mm(1);
    }
    void write_or_leave(const std::string& key, const std::string& value) {
        write(key + ":");
        if (value.empty()) {
            leave(2);
        } else {
            write(value);
        }
    }
    // "front: {across: … mm, down: … mm}", the blanks below one another.
    void pair(const std::string& key) {
        const Length start = line_.x + width_of("front: {across:") + mm(2);
        write(key + ": {across:");
        line_.x = start;
        leave(1);
        write("mm, down:");
        leave(1);
        write("mm}");
    }
    [[nodiscard]] Length width_of(const std::string& text) const { return writing_->width_of(text, type_); }

  private:
    DisplayList* list_;
    Writing* writing_;
    Type type_;
    Length leading_, blank_, left_;
    Point line_;
};

// On a panel of its own, whose top is at `top`.
void draw_form(DisplayList& list, Writing& writing, const MeasuringSheet& sheet, Length top) {
    constexpr Rgb grey = {0.55, 0.55, 0.55};
    const Frame frame{list.size};
    const Rect panel = {{frame.left, top}, {frame.text_right() - frame.left, mm(63) * frame.type}};
    list.items.emplace_back(StrokePath{rounded_path(panel, mm(2)), grey, pt(0.5), {}});
    list.items.emplace_back(BeginTag{{Tag::Role::paragraph, {}, {}, panel}});
    Form form{list, writing, frame, panel.origin + Point{mm(6) * frame.type, mm(9) * frame.type}};
    form.write("printers:");
    const Length dash = mm(5) * frame.type;
    form.next_line(dash);
    form.write_or_leave("- printer", sheet.printer);
    const Length key = dash + form.width_of("- ");
    form.next_line(key);
    form.write_or_leave("tray", sheet.tray);
    form.next_line(key);
    form.write("paper: " + sheet.paper);
    form.next_line(key);
    form.write("backs: " + sheet.backs);
    for (const std::string side : {"front", "back", "lines"}) {
        form.next_line(key);
        form.pair(side);
    }
    list.items.emplace_back(EndTag{});
}

} // namespace

ScalePlaces scale_places(Size paper) {
    const Point middle = Rect{{}, paper}.centre();
    return {{middle.x, middle.y - mm(8)}, {middle.x - Frame{paper}.scales_apart(), middle.y}};
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
    const Length gap = mm(8);
    const Length column = (frame.text_right() - frame.left - gap) / 2;
    write_steps(writing, frame,
                {language.say("measuring.print", {{"turn", how_to_turn(sheet, language)}}),
                 language.say("measuring.turn", {{"upside down", if_upside_down(sheet, language)}}),
                 language.say("measuring.window")},
                1, {frame.left, steps_top}, column);
    std::vector<std::string> reading = {language.say("measuring.fold"), language.say("measuring.measure")};
    if (!sheet.proof) reading.push_back(language.say("measuring.write"));
    write_steps(writing, frame, reading, 4, {frame.left + column + gap, steps_top}, column);

    draw_scales(list, writing, "front");
    if (!sheet.proof) draw_form(list, writing, sheet, middle.y + mm(26) * frame.type);

    const DisplayList across = ruler_line(lines.width, "lines: across", frame, typesetter);
    place(list, across, {middle.x, frame.bottom - mm(14)}, Turn::none);
    const DisplayList down = ruler_line(lines.height, "lines: down", frame, typesetter);
    place(list, down, {frame.right - ruler_inset, middle.y}, Turn::right);

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
