#include "symbols/care_ink.h"

#include "base/overloaded.h"
#include "symbols/named_drawing.h"

namespace dyeleaf::care {

namespace {

constexpr Rgb black{};

struct Strokes {
    Path steps, joints;
    Length radius;
    Point start, pen;

    void joint(Point point) {
        const Path disc = circle_path(point, radius);
        joints.insert(joints.end(), disc.begin(), disc.end());
        pen = point;
    }
    void operator()(const MoveTo& move) {
        start = move.to;
        joint(move.to);
    }
    void operator()(const LineTo& line) {
        steps.insert(steps.end(), {MoveTo{pen}, line});
        joint(line.to);
    }
    void operator()(const CurveTo& curve) {
        steps.insert(steps.end(), {MoveTo{pen}, curve});
        joint(curve.to);
    }
    void operator()(const ClosePath&) {
        if (pen != start) (*this)(LineTo{start});
    }
};

} // namespace

DisplayList blank(Length width) {
    return {{width, symbol_height}, {}};
}

void stroke(DisplayList& list, const Path& path, Length width) {
    Strokes strokes;
    strokes.radius = width / 2;
    for (const auto& step : path)
        std::visit(strokes, step);
    list.items.push_back(StrokePath{std::move(strokes.steps), black, width, {}});
    list.items.push_back(FillPath{std::move(strokes.joints), black});
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
    const Length edge = pen_width / 2;
    const Length right = list.size.width - edge;
    const Length top = edge;
    const Length bottom = body_top + baseline - edge;
    stroke(list, {MoveTo{{edge, top}}, LineTo{{right, bottom}}, MoveTo{{right, top}}, LineTo{{edge, bottom}}});
}

} // namespace dyeleaf::care
