#include "symbols/care_parts.h"

#include <utility>

namespace dyeleaf::drawing {

DisplayList care_sheet(double width, Ink ink) {
    return {{units(width), symbol_height}, std::move(ink)};
}

StrokePath care_line(std::string_view path) {
    return care_line(outline(path));
}

StrokePath care_line(Path path) {
    return stroked(std::move(path), care_weight);
}

Ink bars(int count, double x, double width) {
    Ink ink;
    for (int i = 0; i < count; ++i) {
        const double y = 87.5 + 10 * i;
        ink.emplace_back(care_line(line_path(at(x - width / 2, y), at(x + width / 2, y))));
    }
    return ink;
}

Ink cross(double width) {
    constexpr double top = figure_top - 4;
    constexpr double foot = figure_foot + 4;
    return {care_line(line_path(at(2.5, top), at(width - 2.5, foot))),
            care_line(line_path(at(width - 2.5, top), at(2.5, foot)))};
}

Ink dots(int count, Point centre) {
    constexpr double pitch = 17;
    Ink ink;
    for (int i = 0; i < count; ++i) {
        ink.emplace_back(black(circle_path(centre + at(pitch * (i - (count - 1) / 2.0), 0), units(5))));
    }
    return ink;
}

} // namespace dyeleaf::drawing
