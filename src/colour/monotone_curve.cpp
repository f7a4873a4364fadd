#include "colour/monotone_curve.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace dyeleaf {

namespace {

// One piece between two points.
struct Piece {
    double width = 0, slope = 0;
};

// Where the points turn, the curve lies flat; elsewhere the harmonic mean, weighted towards the shorter piece.
double inner_slope(Piece before, Piece after) {
    if (before.slope * after.slope <= 0) return 0;
    const double first = 2 * after.width + before.width;
    const double second = after.width + 2 * before.width;
    return (first + second) / (first / before.slope + second / after.slope);
}

// That of the parabola through the three points at an end, held back where it would overshoot.
double end_slope(Piece outer, Piece inner) {
    const double slope =
        ((2 * outer.width + inner.width) * outer.slope - outer.width * inner.slope) / (outer.width + inner.width);
    if (slope * outer.slope <= 0) return 0;
    if (outer.slope * inner.slope < 0 && std::abs(slope) > 3 * std::abs(outer.slope)) return 3 * outer.slope;
    return slope;
}

} // namespace

MonotoneCurve::MonotoneCurve(std::vector<double> x, std::vector<double> y) : x_(std::move(x)), y_(std::move(y)) {
    std::vector<Piece> pieces;
    for (std::size_t i = 1; i < x_.size(); ++i)
        pieces.push_back({x_[i] - x_[i - 1], (y_[i] - y_[i - 1]) / (x_[i] - x_[i - 1])});
    if (pieces.size() == 1) {
        slope_ = {pieces[0].slope, pieces[0].slope};
        return;
    }
    slope_.push_back(end_slope(pieces[0], pieces[1]));
    for (std::size_t i = 1; i < pieces.size(); ++i)
        slope_.push_back(inner_slope(pieces[i - 1], pieces[i]));
    slope_.push_back(end_slope(pieces.back(), pieces[pieces.size() - 2]));
}

double MonotoneCurve::at(double x) const {
    if (x <= x_.front()) return y_.front();
    if (x >= x_.back()) return y_.back();
    const auto right = static_cast<std::size_t>(std::ranges::upper_bound(x_, x) - x_.begin());
    const std::size_t left = right - 1;
    const double width = x_[right] - x_[left];
    const double t = (x - x_[left]) / width;
    const double s = 1 - t;
    // Cubic Hermite.
    return s * s * (1 + 2 * t) * y_[left] + t * t * (1 + 2 * s) * y_[right] +
           width * t * s * (s * slope_[left] - t * slope_[right]);
}

} // namespace dyeleaf
