#include "symbols/digits.h"

#include "base/overloaded.h"

namespace dyeleaf::care {

namespace {

// A character in a box 100 mm high, to be scaled; y runs down.
struct Character {
    double width = 0; // mm, for spacing
    Path path;
};

constexpr Point p(double x, double y) {
    return {mm(x), mm(y)};
}

constexpr double gap = 26; // mm between neighbours, from pen middle to pen middle

// A bowl of four quarters, a little squarer than an ellipse.
Path bowl(double left, double top, double right, double bottom) {
    const double x = (left + right) / 2;
    const double y = (top + bottom) / 2;
    const double kx = (right - left) / 2 * 0.58;
    const double ky = (bottom - top) / 2 * 0.58;
    return {MoveTo{p(x, top)}, CurveTo{p(x + kx, top), p(right, y - ky), p(right, y)},
            CurveTo{p(right, y + ky), p(x + kx, bottom), p(x, bottom)},
            CurveTo{p(x - kx, bottom), p(left, y + ky), p(left, y)},
            CurveTo{p(left, y - ky), p(x - kx, top), p(x, top)}};
}

Path operator+(Path a, const Path& b) {
    a.insert(a.end(), b.begin(), b.end());
    return a;
}

Character character(char c) {
    switch (c) {
    case '0': return {56, bowl(0, 0, 56, 100)};
    case '3':
        return {55,
                {MoveTo{p(2, 14)}, CurveTo{p(8, 5), p(17, 0), p(27, 0)}, CurveTo{p(42, 0), p(51, 10), p(51, 23)},
                 CurveTo{p(51, 38), p(41, 47), p(26, 47)}, MoveTo{p(18, 47)}, LineTo{p(26, 47)},
                 CurveTo{p(44, 47), p(55, 57), p(55, 73)}, CurveTo{p(55, 90), p(43, 100), p(27, 100)},
                 CurveTo{p(15, 100), p(6, 94), p(0, 84)}}};
    case '4': return {60, {MoveTo{p(45, 100)}, LineTo{p(45, 0)}, LineTo{p(0, 70)}, LineTo{p(60, 70)}}};
    case '5':
        return {56,
                {MoveTo{p(50, 0)}, LineTo{p(11, 0)}, LineTo{p(7, 45)}, CurveTo{p(12, 39), p(19, 36), p(27, 36)},
                 CurveTo{p(44, 36), p(56, 49), p(56, 67)}, CurveTo{p(56, 87), p(43, 100), p(26, 100)},
                 CurveTo{p(15, 100), p(6, 95), p(0, 86)}}};
    case '6': return {56, Path{MoveTo{p(43, 0)}, CurveTo{p(24, 18), p(0, 42), p(0, 70)}} + bowl(0, 39, 56, 100)};
    case '7': return {54, {MoveTo{p(0, 0)}, LineTo{p(54, 0)}, CurveTo{p(38, 25), p(22, 58), p(17, 100)}}};
    case '9': return {56, Path{MoveTo{p(13, 100)}, CurveTo{p(32, 82), p(56, 58), p(56, 30)}} + bowl(0, 0, 56, 61)};
    case 'P':
        return {56,
                {MoveTo{p(0, 100)}, LineTo{p(0, 0)}, LineTo{p(29, 0)}, CurveTo{p(46, 0), p(56, 11), p(56, 27)},
                 CurveTo{p(56, 43), p(46, 54), p(29, 54)}, LineTo{p(0, 54)}}};
    case 'F': return {48, {MoveTo{p(0, 100)}, LineTo{p(0, 0)}, LineTo{p(53, 0)}, MoveTo{p(0, 49)}, LineTo{p(45, 49)}}};
    case 'W':
        return {130, {MoveTo{p(0, 0)}, LineTo{p(33, 100)}, LineTo{p(65, 0)}, LineTo{p(97, 100)}, LineTo{p(130, 0)}}};
    default: return {};
    }
}

} // namespace

Path lettering(std::string_view text, Point centre, Length height) {
    double width = -gap;
    for (const char c : text)
        width += character(c).width + gap;

    Path path;
    double x = -width / 2;
    const double scale = height / mm(100);
    for (const char c : text) {
        const Character drawn = character(c);
        const auto placed = [&](Point point) {
            return centre + Point{(point.x + mm(x)) * scale, (point.y - mm(50)) * scale};
        };
        for (const auto& step : drawn.path) {
            std::visit(
                Overloaded{
                    [&](MoveTo move) { path.push_back(MoveTo{placed(move.to)}); },
                    [&](LineTo line) { path.push_back(LineTo{placed(line.to)}); },
                    [&](CurveTo curve) {
                        path.push_back(CurveTo{placed(curve.control1), placed(curve.control2), placed(curve.to)});
                    },
                    [&](ClosePath close) { path.push_back(close); }},
                step);
        }
        x += drawn.width + gap;
    }
    return path;
}

} // namespace dyeleaf::care
