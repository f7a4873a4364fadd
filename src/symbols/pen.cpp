#include "symbols/pen.h"

#include "base/number.h"
#include "base/overloaded.h"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <numbers>
#include <stdexcept>
#include <string>
#include <utility>

namespace dyeleaf::drawing {

namespace {

// Path data, read from left to right.
class PathReader {
  public:
    explicit PathReader(std::string_view data) : rest_(data) {}

    [[nodiscard]] Path read() {
        Path path;
        for (std::string_view letter = word(); !letter.empty(); letter = word())
            path.push_back(step(letter));
        return path;
    }

  private:
    Path::value_type step(std::string_view letter) {
        if (letter == "M") return MoveTo{pen_ = point()};
        if (letter == "L") return LineTo{pen_ = point()};
        if (letter == "H") return LineTo{pen_ = {length(), pen_.y}};
        if (letter == "V") return LineTo{pen_ = {pen_.x, length()}};
        if (letter == "Z") return ClosePath{};
        if (letter != "C") throw std::logic_error("path data with " + std::string{letter});
        const CurveTo curve{point(), point(), point()}; // braces: read from left to right
        pen_ = curve.to;
        return curve;
    }
    std::string_view word() {
        rest_.remove_prefix(std::min(rest_.find_first_not_of(" \n"), rest_.size()));
        const std::string_view found = rest_.substr(0, rest_.find_first_of(" \n"));
        rest_.remove_prefix(found.size());
        return found;
    }
    Length length() {
        const std::string_view number = word();
        const auto value = parse_decimal(number);
        if (!value) throw std::logic_error("path data with " + std::string{number} + " for a number");
        return units(*value);
    }
    Point point() { return {length(), length()}; }

    std::string_view rest_;
    Point pen_; // where the last step ended
};

Point end_of(const Path::value_type& step) {
    return std::visit(Overloaded{
                          [](const ClosePath&) { return Point{}; },
                          [](const auto& drawn) { return drawn.to; },
                      },
                      step);
}

} // namespace

Path outline(std::string_view data) {
    return PathReader{data}.read();
}

Path mirrored(const Path& path) {
    return transformed(path, {-1, 0, 0, 1, units(100), {}});
}

Path symmetric(const Path& right_half) {
    const Path left = mirrored(right_half);
    Path result = right_half;
    // Back along the left half: every step leads to where the one before it ended.
    for (std::size_t i = left.size() - 1; i > 0; --i) {
        const Point to = end_of(left[i - 1]);
        const auto* curve = std::get_if<CurveTo>(&left[i]);
        if (curve)
            result.emplace_back(CurveTo{curve->control2, curve->control1, to});
        else
            result.emplace_back(LineTo{to});
    }
    result.emplace_back(ClosePath{});
    return result;
}

Transform turned_by(double degrees, Point and_moved) {
    const double angle = degrees * std::numbers::pi / 180;
    const Transform turn{std::cos(angle), std::sin(angle), -std::sin(angle), std::cos(angle), {}, {}};
    const Point middle = at(50, 50);
    return Transform::move(middle + and_moved).after(turn.after(Transform::move(Point{} - middle)));
}

FillPath black(Path path) {
    return {std::move(path), {0, 0, 0}};
}

FillPath white(Path path) {
    return {std::move(path), {1, 1, 1}};
}

StrokePath stroked(Path path, Length width) {
    return {std::move(path), {0, 0, 0}, width, {}, true};
}

void append(Ink& ink, Ink more) {
    ink.insert(ink.end(), std::make_move_iterator(more.begin()), std::make_move_iterator(more.end()));
}

} // namespace dyeleaf::drawing
