// A smooth curve through points that never swings beyond them.
#pragma once

#include <vector>

namespace dyeleaf {

// Piecewise cubic with slopes that keep it rising where the points rise and falling where they fall (F. N. Fritsch and
// R. E. Carlson, SIAM J. Numer. Anal. 17, 1980; slopes after F. N. Fritsch and J. Butland, 1984). Through two points, a
// straight line.
class MonotoneCurve {
  public:
    // Requires: two or more of each, `x` rising.
    MonotoneCurve(std::vector<double> x, std::vector<double> y);

    // Beyond the ends, what it is there.
    [[nodiscard]] double at(double x) const;

  private:
    std::vector<double> x_, y_, slope_;
};

} // namespace dyeleaf
