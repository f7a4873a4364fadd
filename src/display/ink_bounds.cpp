#include "display/ink_bounds.h"

#include "base/overloaded.h"

#include <optional>

namespace dyeleaf {

namespace {

class Bounds {
  public:
    void add(Rect rect) {
        if (!bounds_) bounds_ = rect;
        const Point least = {smaller(bounds_->left(), rect.left()), smaller(bounds_->top(), rect.top())};
        const Point most = {larger(bounds_->right(), rect.right()), larger(bounds_->bottom(), rect.bottom())};
        bounds_ = Rect{least, {most.x - least.x, most.y - least.y}};
    }
    void add(Point point, Length around) { add(grown({point, {}}, around)); }
    void add(const Path& path, Length around) {
        for (const auto& step : path) {
            std::visit(Overloaded{[&](const MoveTo& move) { add(move.to, around); },
                                  [&](const LineTo& line) { add(line.to, around); },
                                  [&](const CurveTo& curve) {
                                      add(curve.control1, around);
                                      add(curve.control2, around);
                                      add(curve.to, around);
                                  },
                                  [](const ClosePath& /*close*/) {}},
                       step);
        }
    }
    void add(const DrawRun& draw) {
        const Length reach = draw.size * 1.5; // of a letter from the line
        if (draw.turn != 0) return add(draw.baseline, draw.size * draw.run->width + reach);
        add(grown({draw.baseline, {draw.size * draw.run->width, {}}}, reach));
    }
    void add(const DisplayList& list) {
        const Overloaded one{[&](const FillPath& fill) { add(fill.path, {}); },
                             [&](const StrokePath& stroke) { add(stroke.path, stroke.width * 5); }, // a pointed corner
                             [&](const DrawRun& draw) { add(draw); },
                             [&](const DrawPicture& picture) { add(picture.rect); },
                             [&](const Group& group) { add(group.transform.bounds(ink_bounds(*group.list))); },
                             [](const BeginTag& /*begin*/) {},
                             [](const EndTag& /*end*/) {}};
        for (const DisplayItem& item : list.items)
            std::visit(one, item);
    }
    [[nodiscard]] Rect all() const { return bounds_.value_or(Rect{}); }

  private:
    std::optional<Rect> bounds_;
};

} // namespace

Rect ink_bounds(const DisplayList& list) {
    Bounds bounds;
    bounds.add(list);
    return bounds.all();
}

} // namespace dyeleaf
