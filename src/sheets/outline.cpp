#include "sheets/outline.h"

#include "base/overloaded.h"

#include <variant>

namespace dyeleaf {

Path ellipse_path(Rect rect) {
    const auto stretched = [&](Point p) {
        return rect.centre() + Point{p.x * (rect.size.width / mm(2)), p.y * (rect.size.height / mm(2))};
    };
    Path path = circle_path({}, mm(1));
    for (auto& step : path) {
        std::visit(Overloaded{[&](MoveTo& move) { move.to = stretched(move.to); },
                              [&](LineTo& line) { line.to = stretched(line.to); },
                              [&](CurveTo& curve) {
                                  curve = {stretched(curve.control1), stretched(curve.control2), stretched(curve.to)};
                              },
                              [](ClosePath&) {}},
                   step);
    }
    return path;
}

Path visible_part(const Trim& trim, Length bleed) {
    const Rect rect = grown({{}, trim.size}, bleed);
    if (trim.round) return ellipse_path(rect);
    return bleed > Length{} ? rect_path(rect) : rounded_path(rect, trim.corner);
}

} // namespace dyeleaf
