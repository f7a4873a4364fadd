#include "codes/draw_code.h"

#include <utility>

namespace dyeleaf {

namespace {

constexpr Rgb black{0, 0, 0};
constexpr Rgb white{1, 1, 1};
// GS1 General Specifications, 5.2.1.4: guards reach five modules further down.
constexpr int guard_descent = 5;

} // namespace

Point first_module(const Code& code, const CodeSize& size, Length dot) {
    const QuietZone quiet = code_rules(code.kind).quiet;
    return {size.module * quiet.left + dot / 2, size.module * quiet.above + dot / 2};
}

std::vector<DisplayItem> draw_code(const Code& code, const CodeSize& size, Length dot, Point origin) {
    const Point first = origin + first_module(code, size, dot);
    Path path;
    for (const DarkModules& one : code.dark) {
        const Length height = is_linear(code.kind) ? size.bars + size.module * (one.is_guard ? guard_descent : 0)
                                                   : size.module * one.height;
        const Path rect =
            rect_path({first + Point{size.module * one.x, size.module * one.y}, {size.module * one.width, height}});
        path.insert(path.end(), rect.begin(), rect.end());
    }
    return {FillPath{rect_path({origin, size.whole}), white}, FillPath{std::move(path), black, dot}};
}

} // namespace dyeleaf
