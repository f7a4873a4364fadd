#include "colour/kubelka_munk.h"

#include <algorithm>
#include <cmath>

namespace dyeleaf {

double absorption_ratio(double reflectance) {
    constexpr double darkest = 0.001;
    const double r = std::clamp(reflectance, darkest, 1.0);
    return (1 - r) * (1 - r) / (2 * r);
}

// Written so that deep shades do not lose their digits to a difference of large numbers.
double reflectance_of(double absorption_ratio) {
    return 1 / (1 + absorption_ratio + std::sqrt(absorption_ratio * (absorption_ratio + 2)));
}

} // namespace dyeleaf
