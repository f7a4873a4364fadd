#include "symbols/care_ink.h"

#include "symbols/named_drawing.h"

#include <cmath>
#include <optional>
#include <utility>

namespace dyeleaf::care {

namespace {

constexpr Rgb black{};

// Whether the pen goes on without a corner.
bool is_smooth(Point arriving, Point leaving) {
    const double along = arriving.x.in_mm() * leaving.x.in_mm() + arriving.y.in_mm() * leaving.y.in_mm();
    const double across = arriving.x.in_mm() * leaving.y.in_mm() - arriving.y.in_mm() * leaving.x.in_mm();
    return along > 0 && std::abs(across) < 0.05 * along;
}

// Follows a path; where it turns a corner, begins, or ends, a disc is laid and a new stroke begun.
class Nib {
  public:
    explicit Nib(Length width) : radius_(width / 2) {}

    void operator()(const MoveTo& move) {
        lift();
        start_ = pen_ = move.to;
        first_.reset();
        turned_ = false;
    }
    void operator()(const LineTo& line) { step(line, line.to, line.to, pen_); }
    void operator()(const CurveTo& curve) { step(curve, curve.control1, curve.to, curve.control2); }
    void operator()(const ClosePath&) {
        if (pen_ != start_) (*this)(LineTo{start_});
    }
    // At the end of each line.
    void lift() {
        if (!first_) return;
        if (pen_ == start_ && !turned_ && is_smooth(*arriving_, *first_)) {
            strokes.push_back(ClosePath{});
            return;
        }
        joint(start_);
        if (pen_ != start_) joint(pen_);
    }

    Path strokes, joints;

  private:
    void step(const std::variant<MoveTo, LineTo, CurveTo, ClosePath>& step, Point next, Point to, Point before) {
        const Point leaving = next - pen_;
        if (!first_) {
            first_ = leaving;
            strokes.push_back(MoveTo{pen_});
        } else if (!is_smooth(*arriving_, leaving)) {
            joint(pen_);
            strokes.push_back(MoveTo{pen_});
            turned_ = true;
        }
        strokes.push_back(step);
        arriving_ = to - before;
        pen_ = to;
    }
    void joint(Point point) {
        const Path disc = circle_path(point, radius_);
        joints.insert(joints.end(), disc.begin(), disc.end());
    }

    Length radius_;
    Point start_, pen_;
    std::optional<Point> first_, arriving_; // directions of the first step and of the last
    bool turned_ = false;                   // at a corner since the start
};

} // namespace

DisplayList blank(Length width) {
    return {{width, symbol_height}, {}};
}

void stroke(DisplayList& list, const Path& path, Length width) {
    Nib nib{width};
    for (const auto& step : path)
        std::visit(nib, step);
    nib.lift();
    list.items.push_back(StrokePath{std::move(nib.strokes), black, width, {}});
    if (!nib.joints.empty()) list.items.push_back(FillPath{std::move(nib.joints), black});
}

void dot(DisplayList& list, Point centre) {
    list.items.push_back(FillPath{circle_path(centre, mm(0.56)), black});
}

void bars(DisplayList& list, Mildness mildness) {
    const Length half = mm(3.3);
    const Length middle = list.size.width / 2;
    const auto bar = [&](Length top) {
        const Rect rect{{middle - half, top}, {half * 2, pen_width}};
        list.items.push_back(FillPath{rounded_path(rect, pen_width / 2), black});
    };
    if (mildness != Mildness::normal) bar(mm(8.4));
    if (mildness == Mildness::very_mild) bar(mm(9.45));
}

void cross_out(DisplayList& list) {
    const Length top = pen_width / 2;
    const Length bottom = body_top + baseline - top;
    const Length left = (list.size.width - cross_width + pen_width) / 2;
    const Length right = list.size.width - left;
    stroke(list, {MoveTo{{left, top}}, LineTo{{right, bottom}}, MoveTo{{right, top}}, LineTo{{left, bottom}}});
}

} // namespace dyeleaf::care
