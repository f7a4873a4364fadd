#include "speckles/drop.h"

#include "base/overloaded.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <vector>

namespace dyeleaf {

namespace {

double cross(Point a, Point b) {
    return a.x.in_mm() * b.y.in_mm() - b.x.in_mm() * a.y.in_mm();
}

Point times(Point p, double k) {
    return {p.x * k, p.y * k};
}

// Through all points and back to the first: the tangent at each is along its neighbours (Catmull-Rom).
Path smooth(const std::vector<Point>& points) {
    const std::size_t n = points.size();
    Path path{MoveTo{points[0]}};
    for (std::size_t i = 0; i < n; ++i) {
        const Point& from = points[i];
        const Point& to = points[(i + 1) % n];
        const Point leaving = times(to - points[(i + n - 1) % n], 1.0 / 6);
        const Point arriving = times(points[(i + 2) % n] - from, 1.0 / 6);
        path.emplace_back(CurveTo{from + leaving, to - arriving, to});
    }
    path.emplace_back(ClosePath{});
    return path;
}

// Waves round a circle: two to half as many as there are points, the more of them the flatter, so that the points catch
// every one and the edge has no corners.
std::vector<Point> around(double roughness, int points, std::uint64_t seed) {
    constexpr double full_turn = 2 * std::numbers::pi;
    struct Wave {
        double height, phase;
    };
    Random random{seed};
    const double start = random.between(0, full_turn);
    std::vector<Wave> waves;
    for (int k = 2; k <= points / 2; ++k) {
        const double height = roughness * random.between(0.35, 1) * 1.1 / k;
        waves.push_back({height, random.between(0, full_turn)});
    }
    std::vector<Point> result;
    for (int i = 0; i < points; ++i) {
        const double angle = start + full_turn * i / points;
        double reach = 1;
        for (std::size_t w = 0; w < waves.size(); ++w)
            reach += waves[w].height * std::cos(static_cast<double>(w + 2) * angle + waves[w].phase);
        result.push_back({mm(reach * std::cos(angle)), mm(reach * std::sin(angle))});
    }
    return result;
}

} // namespace

double covered(const Path& path) {
    double area = 0;
    Point at;
    Point start;
    for (const auto& step : path) {
        std::visit(Overloaded{
                       [&](const MoveTo& move) { at = start = move.to; },
                       [&](const LineTo& line) {
                           area += cross(at, line.to) / 2;
                           at = line.to;
                       },
                       // Green's theorem on a cubic Bézier.
                       [&](const CurveTo& curve) {
                           const auto& [c1, c2, to] = curve;
                           area += (6 * cross(at, c1) + 3 * cross(at, c2) + cross(at, to) + 3 * cross(c1, c2) +
                                    3 * cross(c1, to) + 6 * cross(c2, to)) /
                                   20;
                           at = to;
                       },
                       [&](const ClosePath&) {
                           area += cross(at, start) / 2;
                           at = start;
                       },
                   },
                   step);
    }
    return std::abs(area);
}

int drop_points(Length width) {
    return std::clamp(static_cast<int>(std::lround(4.2 + width.in_mm())), 5, 14);
}

Path drop_path(Point centre, Length width, double roughness, int points, std::uint64_t seed) {
    std::vector<Point> outline = around(roughness, points, seed);
    const double wanted = std::numbers::pi / 4 * width.in_mm() * width.in_mm();
    const double scale = std::sqrt(wanted / covered(smooth(outline)));
    for (Point& point : outline)
        point = centre + times(point, scale);
    return smooth(outline);
}

} // namespace dyeleaf
