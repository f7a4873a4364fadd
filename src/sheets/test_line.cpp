#include "sheets/test_line.h"

#include <algorithm>
#include <memory>
#include <utility>

namespace dyeleaf {

namespace {

constexpr Length end_tick = mm(3);
constexpr Length small_tick = mm(1);
constexpr Length line_width = pt(0.5);
constexpr Length under_line = mm(0.8);    // from the line to its caption
constexpr Length after_line = mm(3);      // from the line's end to a caption beside it
constexpr Length caption_inset = mm(1.5); // keeps a caption under the line clear of the end tick

struct Gap {
    Length from, to;
    [[nodiscard]] Length length() const { return to - from; }
};

// What `taken` leaves of `whole`, in order; empty intervals among them where something lies at the edge, so that the
// first and the last are always those along the two edges.
std::vector<Gap> gaps(Gap whole, std::vector<Gap> taken) {
    std::ranges::sort(taken, {}, &Gap::from);
    std::vector<Gap> free;
    Length reached = whole.from;
    for (const Gap& next : taken) {
        if (next.from > reached || free.empty()) free.push_back({reached, larger(next.from, reached)});
        reached = larger(reached, next.to);
    }
    free.push_back({reached, larger(whole.to, reached)});
    return free;
}

// The part `depth` deep nearest to the sheet's edge, or in the middle between labels; at the far edge first.
std::optional<Gap> deep_enough(const std::vector<Gap>& free, Length depth) {
    if (fits(depth, free.back().length())) return Gap{free.back().to - depth, free.back().to};
    if (fits(depth, free.front().length())) return Gap{free.front().from, free.front().from + depth};
    for (const Gap& gap : free) {
        const Length rest = gap.length() - depth;
        if (fits(depth, gap.length())) return Gap{gap.from + rest / 2, gap.to - rest / 2};
    }
    return std::nullopt;
}

// The band from side to side of `printable`.
std::optional<Rect> lying_band(Rect printable, const std::vector<Rect>& occupied, Length depth) {
    if (!fits(test_line_length + line_width, printable.size.width)) return std::nullopt;
    std::vector<Gap> taken;
    taken.reserve(occupied.size());
    for (const Rect& rect : occupied)
        taken.push_back({rect.top(), rect.bottom()});
    const auto band = deep_enough(gaps({printable.top(), printable.bottom()}, taken), depth);
    if (!band) return std::nullopt;
    return Rect{{printable.left(), band->from}, {printable.size.width, depth}};
}

// Across and down exchanged, so that what runs from top to bottom lies.
Rect transposed(Rect rect) {
    return {{rect.origin.y, rect.origin.x}, {rect.size.height, rect.size.width}};
}

StrokePath stroke(Point from, Point to) {
    return {line_path(from, to), Rgb{}, line_width, {}};
}

} // namespace

std::optional<TestBand> find_test_band(Size paper, Length margin, const std::vector<Rect>& occupied, Length caption) {
    const Rect printable = shrunk({{}, paper}, Insets::all(margin));
    const Length with_caption = larger(end_tick, end_tick / 2 + under_line + caption);
    std::vector<Rect> on_side = occupied;
    std::ranges::transform(occupied, on_side.begin(), transposed);
    for (const Length depth : {with_caption, end_tick}) {
        if (const auto band = lying_band(printable, occupied, depth)) return TestBand{*band, false};
        if (const auto band = lying_band(transposed(printable), on_side, depth))
            return TestBand{transposed(*band), true};
    }
    return std::nullopt;
}

Group draw_test_line(const TestBand& band, const DisplayList& caption) {
    const Turn turn = band.upright ? Turn::left : Turn::none;
    const Size size = band.upright ? Size{band.rect.size.height, band.rect.size.width} : band.rect.size;
    const bool under = fits(end_tick / 2 + under_line + caption.size.height, size.height);
    const Length with_caption = test_line_length + after_line + caption.size.width;
    const bool beside = !under && fits(with_caption, size.width);

    const Length start = (size.width - (beside ? with_caption : test_line_length)) / 2;
    const Length y = end_tick / 2;
    DisplayList list{size, {}};
    list.items.emplace_back(stroke({start, y}, {start + test_line_length, y}));
    constexpr int centimetres = 10;
    for (int i = 0; i <= centimetres; ++i) {
        const bool end = i == 0 || i == centimetres;
        const Length x = start + mm(10) * i;
        list.items.emplace_back(
            stroke({x, y - (end ? end_tick / 2 : small_tick)}, {x, y + (end ? end_tick / 2 : Length{})}));
    }
    const Point under_left = {start + caption_inset, y + under_line};
    const Point after_end = {start + test_line_length + after_line, (size.height - caption.size.height) / 2};
    if (under || beside) {
        list.items.emplace_back(Group{std::make_shared<DisplayList>(caption),
                                      Transform::move(under ? under_left : after_end), std::nullopt});
    }
    return {std::make_shared<DisplayList>(std::move(list)), Transform::move(band.rect.origin).after(turned(turn, size)),
            std::nullopt};
}

} // namespace dyeleaf
