#include "display/transform_path.h"

#include "base/overloaded.h"

namespace dyeleaf {

Path transformed(Path path, const Transform& transform) {
    for (auto& step : path) {
        std::visit(Overloaded{[&](MoveTo& move) { move.to = transform.apply(move.to); },
                              [&](LineTo& line) { line.to = transform.apply(line.to); },
                              [&](CurveTo& curve) {
                                  curve = {transform.apply(curve.control1), transform.apply(curve.control2),
                                           transform.apply(curve.to)};
                              },
                              [](ClosePath&) {}},
                   step);
    }
    return path;
}

} // namespace dyeleaf
