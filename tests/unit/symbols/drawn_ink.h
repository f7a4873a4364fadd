// What a drawing of paths leaves on paper, for tests.
#pragma once

#include "base/overloaded.h"
#include "display/display_list.h"

#include <algorithm>
#include <iterator>
#include <vector>

namespace dyeleaf {

// Where a path's middle goes, in short straight steps, one line for each MoveTo.
using Line = std::vector<Point>;
inline std::vector<Line> lines_of(const Path& path) {
    std::vector<Line> lines;
    for (const auto& step : path) {
        std::visit(
            Overloaded{[&](const MoveTo& move) { lines.push_back({move.to}); },
                       [&](const LineTo& line) { lines.back().push_back(line.to); },
                       [&](const CurveTo& curve) {
                           const Point from = lines.back().back();
                           for (int i = 1; i <= 16; ++i) {
                               const double t = i / 16.0;
                               const double u = 1 - t;
                               const auto blend = [&](Length a, Length b, Length c, Length d) {
                                   return a * (u * u * u) + b * (3 * u * u * t) + c * (3 * u * t * t) + d * (t * t * t);
                               };
                               lines.back().push_back({blend(from.x, curve.control1.x, curve.control2.x, curve.to.x),
                                                       blend(from.y, curve.control1.y, curve.control2.y, curve.to.y)});
                           }
                       },
                       [](const ClosePath&) {}},
            step);
    }
    return lines;
}

inline Rect around(const std::vector<Line>& lines) {
    Point least = lines.at(0).at(0);
    Point most = least;
    for (const Line& line : lines) {
        for (const Point p : line) {
            least = {smaller(least.x, p.x), smaller(least.y, p.y)};
            most = {larger(most.x, p.x), larger(most.y, p.y)};
        }
    }
    return {least, {most.x - least.x, most.y - least.y}};
}

// Filled pieces of a drawing: discs, bars.
inline std::vector<Rect> fills(const DisplayList& list) {
    std::vector<Rect> found;
    for (const auto& item : list.items) {
        if (const auto* fill = std::get_if<FillPath>(&item)) {
            for (const Line& line : lines_of(fill->path))
                found.push_back(around({line}));
        }
    }
    return found;
}

inline std::vector<Line> strokes(const DisplayList& list) {
    std::vector<Line> found;
    for (const auto& item : list.items) {
        if (const auto* stroke = std::get_if<StrokePath>(&item))
            std::ranges::copy(lines_of(stroke->path), std::back_inserter(found));
    }
    return found;
}

// Round everything that is inked.
inline Rect ink(const DisplayList& list) {
    std::vector<Line> corners;
    const auto add = [&](Rect rect) { corners.push_back({rect.origin, {rect.right(), rect.bottom()}}); };
    for (const auto& item : list.items) {
        if (const auto* stroke = std::get_if<StrokePath>(&item)) {
            add(grown(around(lines_of(stroke->path)), stroke->width / 2));
        }
    }
    std::ranges::for_each(fills(list), add);
    return around(corners);
}

} // namespace dyeleaf
