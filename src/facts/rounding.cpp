#include "facts/rounding.h"

#include <algorithm>
#include <cmath>

namespace dyeleaf {

double rounded_down(double value, double step) {
    constexpr double nudge = 1e-9;
    return std::floor(value / step + nudge) * step;
}

int rounded_length(double units) {
    constexpr double coarse_from = 50;
    return static_cast<int>(rounded_down(units, units < coarse_from ? 1 : 5));
}

Mass rounded_to(Mass mass, Mass step) {
    if (step <= Mass{} || mass <= Mass{}) return mass;
    return step * std::max(1.0, std::round(mass / step));
}

Volume measurable(Volume volume) {
    constexpr Volume fine_below = millilitres(10);
    if (volume <= Volume{}) return volume;
    const double steps = volume < fine_below ? 10 : 1; // to a millilitre
    return millilitres(std::max(1.0, std::round(volume.number() * steps)) / steps);
}

Length cuttable(Length length) {
    return mm(std::round(length.in_mm() * 10) / 10);
}

std::int64_t rounded_half_up(std::int64_t dividend, std::int64_t divisor) {
    return (2 * dividend + divisor) / (2 * divisor);
}

} // namespace dyeleaf
