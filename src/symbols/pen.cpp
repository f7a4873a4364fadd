#include "symbols/pen.h"

#include "base/number.h"

#include <cmath>
#include <iterator>
#include <numbers>
#include <stdexcept>
#include <string>
#include <utility>

namespace dyeleaf {

namespace {

class PathReader {
  public:
    explicit PathReader(std::string_view data) : rest_(data) {}

    Path read() {
        Path path;
        for (std::string_view step = word(); !step.empty(); step = word())
            path.push_back(read_step(step));
        return path;
    }

  private:
    std::variant<MoveTo, LineTo, CurveTo, ClosePath> read_step(std::string_view step) {
        if (step == "M") return MoveTo{point()};
        if (step == "L") return LineTo{point()};
        if (step == "H") return LineTo{pen_ = {coordinate(), pen_.y}};
        if (step == "V") return LineTo{pen_ = {pen_.x, coordinate()}};
        if (step == "Z") return ClosePath{};
        if (step != "C") throw std::logic_error("a path has the step " + std::string{step});
        const Point control1 = point();
        const Point control2 = point();
        return CurveTo{control1, control2, point()};
    }

    Point point() {
        const Length x = coordinate();
        return pen_ = {x, coordinate()};
    }

    Length coordinate() {
        const std::string_view text = word();
        const auto value = parse_decimal(text);
        if (!value) throw std::logic_error("a path has no number but " + std::string{text});
        return units(*value);
    }

    std::string_view word() {
        const std::size_t start = rest_.find_first_not_of(" \n");
        if (start == std::string_view::npos) return {};
        const std::size_t end = std::min(rest_.find_first_of(" \n", start), rest_.size());
        const std::string_view found = rest_.substr(start, end - start);
        rest_.remove_prefix(end);
        return found;
    }

    std::string_view rest_;
    Point pen_; // where the last step ended
};

} // namespace

Path path_of(std::string_view data) {
    return PathReader{data}.read();
}

Path transformed(const Path& path, const Transform& transform) {
    Path result;
    for (const auto& step : path) {
        if (const auto* move = std::get_if<MoveTo>(&step)) {
            result.emplace_back(MoveTo{transform.apply(move->to)});
        } else if (const auto* line = std::get_if<LineTo>(&step)) {
            result.emplace_back(LineTo{transform.apply(line->to)});
        } else if (const auto* curve = std::get_if<CurveTo>(&step)) {
            result.emplace_back(CurveTo{transform.apply(curve->control1), transform.apply(curve->control2),
                                        transform.apply(curve->to)});
        } else {
            result.emplace_back(ClosePath{});
        }
    }
    return result;
}

Path mirrored(const Path& path, double x) {
    return transformed(path, {-1, 0, 0, 1, units(2 * x), {}});
}

Transform turned_about(Point centre, double degrees) {
    const double angle = degrees * std::numbers::pi / 180;
    const Transform turn{std::cos(angle), std::sin(angle), -std::sin(angle), std::cos(angle), {}, {}};
    return Transform::move(centre).after(turn).after(Transform::move({-centre.x, -centre.y}));
}

StrokePath stroked(Path path, Length width, Rgb colour) {
    return {std::move(path), colour, width, {}, true};
}

FillPath filled(Path path, Rgb colour) {
    return {std::move(path), colour};
}

FillPath dot(Point centre, Length radius, Rgb colour) {
    return {circle_path(centre, radius), colour};
}

void append(Ink& ink, Ink more) {
    ink.insert(ink.end(), std::make_move_iterator(more.begin()), std::make_move_iterator(more.end()));
}

} // namespace dyeleaf
