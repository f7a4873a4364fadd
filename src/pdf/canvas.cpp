#include "pdf/canvas.h"

#include "base/overloaded.h"
#include "pdf/syntax.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <iterator>

namespace dyeleaf {

namespace {

constexpr int fine = 2;      // decimals of a point: 0.0035 mm, less than a press shows
constexpr int very_fine = 4; // where ink has to meet the dots of a printer
constexpr int pure = 6;      // of a matrix

// The rectangle that a path is, if it is one: a shorter operator draws it.
std::optional<Rect> as_rectangle(const Path& path) {
    if (path.size() != 5 || !std::holds_alternative<ClosePath>(path[4])) return std::nullopt;
    const auto* start = std::get_if<MoveTo>(path.data());
    std::array<Point, 4> corners{};
    if (start == nullptr) return std::nullopt;
    corners[0] = start->to;
    for (std::size_t i = 1; i < 4; ++i) {
        const auto* line = std::get_if<LineTo>(&path[i]);
        if (line == nullptr) return std::nullopt;
        corners.at(i) = line->to;
    }
    const bool straight = corners[0].y == corners[1].y && corners[1].x == corners[2].x &&
                          corners[2].y == corners[3].y && corners[3].x == corners[0].x;
    if (!straight) return std::nullopt;
    return Rect{corners[0], {corners[2].x - corners[0].x, corners[2].y - corners[0].y}};
}

double rounded(Length length, int decimals) {
    const double power = std::pow(10, decimals);
    return std::round(length.in_pt() * power) / power;
}

std::string entries(std::string_view key, char letter, const std::set<int>& objects) {
    if (objects.empty()) return {};
    std::string text = fmt::format("/{}<<", key);
    for (const int object : objects)
        fmt::format_to(std::back_inserter(text), "/{}{} {}", letter, object, reference(object));
    return text + ">>";
}

} // namespace

std::string Resources::dictionary() const {
    return "<<" + entries("Font", 'F', fonts) + entries("XObject", 'X', drawings) + ">>";
}

void Canvas::start_at_top(double page_height) {
    write_transform({1, 0, 0, -1, 0, page_height});
}

void Canvas::save() {
    saved_.push_back(state_);
    word("q");
}

void Canvas::restore() {
    state_ = std::move(saved_.back());
    saved_.pop_back();
    word("Q");
}

void Canvas::transform(const PageMatrix& by) {
    write_transform(by);
    state_.matrix = state_.matrix.after(by);
}

void Canvas::write_transform(const PageMatrix& by) {
    numbers({by.a, by.b, by.c, by.d}, pure);
    numbers({by.e, by.f}, very_fine);
    word("cm");
}

void Canvas::fill(const Path& path, Rgb colour) {
    set_colour(state_.fill, colour, "rg");
    trace(path, fine);
    word("f");
}

void Canvas::fill_exactly(const Path& path, Rgb colour) {
    set_colour(state_.fill, colour, "rg");
    trace(path, very_fine);
    word("f");
}

void Canvas::stroke(const StrokePath& stroke) {
    set_colour(state_.stroke, stroke.colour, "RG");
    if (const double width = stroke.width.in_pt(); width != state_.width) {
        numbers({state_.width = width}, 3);
        word("w");
    }
    set_ends(stroke.round);
    set_dash(stroke.dash);
    trace(stroke.path, fine);
    word("S");
}

void Canvas::clip(const Path& path) {
    trace(path, fine);
    word("W n");
}

void Canvas::draw(int object) {
    resources_.drawings.insert(object);
    fmt::format_to(std::back_inserter(operators_), "/X{} Do\n", object);
}

void Canvas::begin_text(int font, double size, const PageMatrix& matrix, Rgb colour) {
    set_colour(state_.fill, colour, "rg");
    word("BT");
    if (font != state_.font || size != state_.size) {
        resources_.fonts.insert(font);
        fmt::format_to(std::back_inserter(operators_), "/F{} ", font);
        numbers({size}, 3);
        word("Tf");
        state_.font = font;
        state_.size = size;
    }
    numbers({matrix.a, matrix.b, matrix.c, matrix.d}, pure);
    numbers({matrix.e, matrix.f}, fine);
    word("Tm");
}

void Canvas::end_text() {
    word("ET");
}

void Canvas::begin_mark(std::string_view words) {
    word(words);
}

void Canvas::end_mark() {
    word("EMC");
}

void Canvas::trace(const Path& path, int decimals) {
    if (const auto rect = as_rectangle(path)) {
        const double left = rounded(rect->left(), decimals);
        const double top = rounded(rect->top(), decimals);
        // Edges that meet are rounded alike.
        numbers({left, top, rounded(rect->right(), decimals) - left, rounded(rect->bottom(), decimals) - top},
                decimals);
        return word("re");
    }
    const Overloaded step{[&](const MoveTo& move) {
                              numbers({move.to.x.in_pt(), move.to.y.in_pt()}, decimals);
                              word("m");
                          },
                          [&](const LineTo& line) {
                              numbers({line.to.x.in_pt(), line.to.y.in_pt()}, decimals);
                              word("l");
                          },
                          [&](const CurveTo& curve) {
                              numbers({curve.control1.x.in_pt(), curve.control1.y.in_pt(), curve.control2.x.in_pt(),
                                       curve.control2.y.in_pt(), curve.to.x.in_pt(), curve.to.y.in_pt()},
                                      decimals);
                              word("c");
                          },
                          [&](const ClosePath& /*close*/) { word("h"); }};
    for (const auto& one : path)
        std::visit(step, one);
}

void Canvas::set_colour(std::optional<Rgb>& known, Rgb wanted, std::string_view name) {
    if (known == wanted) return;
    known = wanted;
    numbers({wanted.red, wanted.green, wanted.blue}, 3);
    word(name);
}

void Canvas::set_ends(bool round) {
    if (round == state_.round) return;
    word(round ? "1 J 1 j" : "0 J 0 j");
    state_.round = round;
}

void Canvas::set_dash(const std::vector<Length>& dash) {
    if (dash == state_.dash) return;
    operators_ += '[';
    for (const Length length : dash)
        numbers({length.in_pt()}, fine);
    word("]0 d");
    state_.dash = dash;
}

void Canvas::numbers(std::initializer_list<double> values, int decimals) {
    for (const double value : values) {
        append_number(operators_, value, decimals);
        operators_ += ' ';
    }
}

void Canvas::word(std::string_view name) {
    operators_ += name;
    operators_ += '\n';
}

} // namespace dyeleaf
