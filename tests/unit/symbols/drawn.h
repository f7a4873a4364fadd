// What a symbol's ink covers, for tests of its geometry.
#pragma once

#include "symbols/symbols.h"

#include <catch2/catch.hpp>

#include <string>
#include <vector>

namespace dyeleaf {

struct Inked {
    Rect rect; // of the ink, strokes with half their width all round
    Rgb colour;
    Length width; // of a stroke; zero for a filled shape
    std::vector<Point> points;
};

// Corners, and points along the curves between them.
inline std::vector<Point> points_of(const Path& path) {
    std::vector<Point> points;
    for (const auto& step : path) {
        if (const auto* move = std::get_if<MoveTo>(&step)) points.push_back(move->to);
        if (const auto* line = std::get_if<LineTo>(&step)) points.push_back(line->to);
        const auto* curve = std::get_if<CurveTo>(&step);
        if (curve == nullptr) continue;
        const Point from = points.back();
        for (int i = 1; i <= 10; ++i) {
            const double t = i / 10.0;
            const double u = 1 - t;
            const auto blend = [&](Length Point::*axis) {
                return from.*axis * (u * u * u) + curve->control1.*axis * (3 * u * u * t) +
                       curve->control2.*axis * (3 * u * t * t) + curve->to.*axis * (t * t * t);
            };
            points.push_back({blend(&Point::x), blend(&Point::y)});
        }
    }
    return points;
}

inline Rect around(const std::vector<Point>& points) {
    Point least = points.at(0);
    Point most = points.at(0);
    for (const Point p : points) {
        least = {smaller(least.x, p.x), smaller(least.y, p.y)};
        most = {larger(most.x, p.x), larger(most.y, p.y)};
    }
    return {least, {most.x - least.x, most.y - least.y}};
}

inline std::vector<Inked> inked(const std::string& key, bool mono = false) {
    const auto drawing = symbol_drawing(key, mono);
    REQUIRE(drawing);
    std::vector<Inked> all;
    for (const DisplayItem& item : drawing->items) {
        if (const auto* fill = std::get_if<FillPath>(&item)) {
            all.push_back({around(points_of(fill->path)), fill->colour, {}, points_of(fill->path)});
        } else {
            const auto& stroke = std::get<StrokePath>(item);
            const Rect middle = around(points_of(stroke.path));
            all.push_back({grown(middle, stroke.width / 2), stroke.colour, stroke.width, points_of(stroke.path)});
        }
    }
    return all;
}

inline Rect inked_rect(const std::vector<Inked>& all) {
    std::vector<Point> corners;
    for (const Inked& one : all) {
        corners.push_back(one.rect.origin);
        corners.push_back({one.rect.right(), one.rect.bottom()});
    }
    return around(corners);
}

} // namespace dyeleaf
