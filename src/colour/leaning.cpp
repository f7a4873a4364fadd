#include "colour/leaning.h"

#include "colour/xyz.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace dyeleaf {

namespace {

constexpr double least = 1;
// Below this chroma the angle of a hue tells nothing (our own figure).
constexpr double least_leaning_chroma = 5;

int sign(double difference) {
    if (std::abs(difference) < least) return 0;
    return difference > 0 ? 1 : -1;
}

// In quarters of the circle from red by yellow, green and blue, 0 to 4.
double hue_angle(Lab colour) {
    const double quarters = std::atan2(colour.b, colour.a) * 2 / std::numbers::pi;
    return quarters < 0 ? quarters + 4 : quarters;
}

Pole pole(double quarters) {
    constexpr std::array poles = {Pole::red, Pole::yellow, Pole::green, Pole::blue};
    return poles.at(static_cast<std::size_t>(static_cast<int>(quarters) % 4));
}

std::optional<Pole> between_greys(double a, double b) {
    if (std::hypot(a, b) < least) return std::nullopt;
    if (std::abs(a) > std::abs(b)) return a > 0 ? Pole::red : Pole::green;
    return b > 0 ? Pole::yellow : Pole::blue;
}

std::optional<Pole> ahead(Lab from, Lab to) {
    const double chromas = chroma(from) * chroma(to);
    const double across = from.a * to.b - from.b * to.a; // the sine of the angle between them, times both chromas
    const double along = from.a * to.a + from.b * to.b;
    if (std::sqrt(std::max(0.0, 2 * (chromas - along))) < least) return std::nullopt; // ΔH*ab
    return pole(across > 0 ? std::ceil(hue_angle(to)) : std::floor(hue_angle(to)));
}

} // namespace

Leaning leaning(Lab from, Lab to) {
    const bool are_grey = chroma(from) < least_leaning_chroma || chroma(to) < least_leaning_chroma;
    return {sign(to.lightness - from.lightness), sign(chroma(to) - chroma(from)),
            are_grey ? between_greys(to.a - from.a, to.b - from.b) : ahead(from, to)};
}

} // namespace dyeleaf
