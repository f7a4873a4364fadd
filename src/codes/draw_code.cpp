#include "codes/draw_code.h"

#include "codes/outline.h"

#include <utility>

namespace dyeleaf {

namespace {

constexpr Rgb black{0, 0, 0};
constexpr Rgb white{1, 1, 1};
// GS1 General Specifications, 5.2.1 (clause from memory): guards reach five modules further down.
constexpr int guard_descent = 5;
// Of a dot, so much is taken off every edge: what inks each dot that a shape touches (as ISO 32000-1, 10.6.5 has it;
// clause from memory) would make every bar a dot wider wherever an edge falls a hair beyond its own.
constexpr double taken_off = 0.1;

void add_bars(const Code& code, const CodeSize& size, Length dot, Point first, Path& path) {
    const Length off = dot * taken_off;
    for (const DarkModules& bar : code.dark) {
        const Length height = size.bars + size.module * (bar.is_guard ? guard_descent : 0);
        const Rect rect{first + Point{size.module * bar.x, Length{}}, {size.module * bar.width, height}};
        const Path closed = rect_path(grown(rect, -off));
        path.insert(path.end(), closed.begin(), closed.end());
    }
}

void add_outlines(const Code& code, const CodeSize& size, Length dot, Point first, Path& path) {
    const Length off = dot * taken_off;
    for (const auto& outline : outlines(code)) {
        for (std::size_t i = 0; i < outline.size(); ++i) {
            const OutlineCorner& corner = outline[i];
            const Point to = first + Point{size.module * corner.x + off * corner.inward_x,
                                           size.module * corner.y + off * corner.inward_y};
            if (i == 0) {
                path.emplace_back(MoveTo{to});
            } else {
                path.emplace_back(LineTo{to});
            }
        }
        path.emplace_back(ClosePath{});
    }
}

} // namespace

Point first_module(const Code& code, const CodeSize& size, Length dot) {
    const QuietZone quiet = code_rules(code.kind).quiet;
    return {size.module * quiet.left + dot / 2, size.module * quiet.above + dot / 2};
}

std::vector<DisplayItem> draw_code(const Code& code, const CodeSize& size, Length dot, Point origin) {
    const Point first = origin + first_module(code, size, dot);
    Path path = {MoveTo{first}}; // draws nothing: the place that is laid on a whole dot
    is_linear(code.kind) ? add_bars(code, size, dot, first, path) : add_outlines(code, size, dot, first, path);
    return {FillPath{rect_path({origin, size.whole}), white}, FillPath{std::move(path), black, dot}};
}

} // namespace dyeleaf
