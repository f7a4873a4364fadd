#include "colour/difference.h"

#include <cmath>
#include <numbers>

namespace dyeleaf {

namespace {

constexpr double half_turn = 180;
constexpr double whole_turn = 360;

double radians(double degrees) {
    return degrees * std::numbers::pi / half_turn;
}

double seventh_power(double value) {
    return std::pow(value, 7);
}

// Falls from 1 for strong colours to 0 for greys.
double strength(double chroma) {
    return std::sqrt(seventh_power(chroma) / (seventh_power(chroma) + seventh_power(25)));
}

// 0 to 360; 0 for a grey, which has none.
double hue_angle(double a, double b) {
    if (a == 0 && b == 0) return 0;
    const double degrees = std::atan2(b, a) * half_turn / std::numbers::pi;
    return degrees < 0 ? degrees + whole_turn : degrees;
}

// From the first to the second by the shorter way.
double hue_step(double first, double second) {
    const double step = second - first;
    if (std::abs(step) <= half_turn) return step;
    return step > 0 ? step - whole_turn : step + whole_turn;
}

// Halfway between the two on the shorter way.
double hue_between(double first, double second) {
    const double sum = first + second;
    if (std::abs(first - second) <= half_turn) return sum / 2;
    return sum < whole_turn ? (sum + whole_turn) / 2 : (sum - whole_turn) / 2;
}

} // namespace

double delta_e_76(Lab a, Lab b) {
    return std::hypot(a.lightness - b.lightness, a.a - b.a, a.b - b.b);
}

double delta_e_2000(Lab first, Lab second) {
    // Greys and near-greys are spread out along a, so that their small differences count.
    const double mean_chroma = (std::hypot(first.a, first.b) + std::hypot(second.a, second.b)) / 2;
    const double spread = 1 + (1 - strength(mean_chroma)) / 2;
    const double a1 = first.a * spread;
    const double a2 = second.a * spread;
    const double chroma1 = std::hypot(a1, first.b);
    const double chroma2 = std::hypot(a2, second.b);
    const double hue1 = hue_angle(a1, first.b);
    const double hue2 = hue_angle(a2, second.b);
    const bool has_grey = chroma1 * chroma2 == 0;

    const double lightness_step = second.lightness - first.lightness;
    const double chroma_step = chroma2 - chroma1;
    const double angle = has_grey ? 0 : hue_step(hue1, hue2);
    const double hue_distance = 2 * std::sqrt(chroma1 * chroma2) * std::sin(radians(angle) / 2);

    const double lightness = (first.lightness + second.lightness) / 2;
    const double chroma = (chroma1 + chroma2) / 2;
    const double hue = has_grey ? hue1 + hue2 : hue_between(hue1, hue2);
    const double t = 1 - 0.17 * std::cos(radians(hue - 30)) + 0.24 * std::cos(radians(2 * hue)) +
                     0.32 * std::cos(radians(3 * hue + 6)) - 0.20 * std::cos(radians(4 * hue - 63));
    const double from_middle = (lightness - 50) * (lightness - 50);
    const double lightness_weight = 1 + 0.015 * from_middle / std::sqrt(20 + from_middle);
    const double chroma_weight = 1 + 0.045 * chroma;
    const double hue_weight = 1 + 0.015 * chroma * t;
    const double blue = (hue - 275) / 25;
    const double rotation = -std::sin(radians(60 * std::exp(-blue * blue))) * 2 * strength(chroma);

    const double l = lightness_step / lightness_weight;
    const double c = chroma_step / chroma_weight;
    const double h = hue_distance / hue_weight;
    return std::sqrt(l * l + c * c + h * h + rotation * c * h);
}

} // namespace dyeleaf
