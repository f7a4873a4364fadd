#include "colour/illuminants.h"

#include <cmath>

namespace dyeleaf {

namespace {

// The steps at which daylight's components are tabulated are twice as wide as ours.
using Component = std::array<double, visible::count / 2 + 1>;

// CIE 15:2004, table T.2: daylight's mean and its two ways of changing, 380 to 780 nm by 10 nm.
constexpr Component daylight_mean{63.4,  65.8,  94.8,  104.8, 105.9, 96.8,  113.9, 125.6, 125.5, 121.3, 121.3,
                                  113.5, 113.1, 110.8, 106.5, 108.8, 105.3, 104.4, 100,   96,    95.1,  89.1,
                                  90.5,  90.3,  88.4,  84,    85.1,  81.9,  82.6,  84.9,  81.3,  71.9,  74.3,
                                  76.4,  63.3,  71.7,  77,    65.2,  47.7,  68.6,  65};
constexpr Component daylight_yellow_blue{38.5,  35,    43.4,  46.3,  43.9,  37.1,  36.7,  35.9, 32.6,  27.9, 24.3,
                                         20.1,  16.2,  13.2,  8.6,   6.1,   4.2,   1.9,   0,    -1.6,  -3.5, -3.5,
                                         -5.8,  -7.2,  -8.6,  -9.5,  -10.9, -10.7, -12,   -14,  -13.6, -12,  -13.3,
                                         -12.9, -10.6, -11.6, -12.2, -10.2, -7.8,  -11.2, -10.4};
constexpr Component daylight_pink_green{3,    1.2,  -1.1, -0.5, -0.7, -1.2, -2.6, -2.9, -2.8, -2.6, -2.6,
                                        -1.8, -1.5, -1.3, -1.2, -1,   -0.5, -0.3, 0,    0.2,  0.5,  2.1,
                                        3.2,  4.1,  4.7,  5.1,  6.7,  7.3,  8.6,  9.8,  10.2, 8.3,  9.6,
                                        8.5,  7,    7.6,  8,    6.7,  5.2,  7.4,  6.8};

// CIE 15:2004, table T.6: the usual lamp FL2 and the three-band lamp FL11.
constexpr Curve fl2{1.18,  1.48,  1.84,  2.15,  3.44,  15.69, 3.85,  3.74,  4.19,  4.62,  5.06,  34.98, 11.81, 6.27,
                    6.63,  6.93,  7.19,  7.4,   7.54,  7.62,  7.65,  7.62,  7.62,  7.45,  7.28,  7.15,  7.05,  7.04,
                    7.16,  7.47,  8.04,  8.88,  10.01, 24.88, 16.64, 14.59, 16.16, 17.56, 18.62, 21.47, 22.79, 19.29,
                    18.66, 17.73, 16.54, 15.21, 13.8,  12.36, 10.95, 9.65,  8.4,   7.32,  6.31,  5.43,  4.68,  4.02,
                    3.45,  2.96,  2.55,  2.19,  1.89,  1.64,  1.53,  1.27,  1.1,   0.99,  0.88,  0.76,  0.68,  0.61,
                    0.56,  0.54,  0.51,  0.47,  0.47,  0.43,  0.46,  0.47,  0.4,   0.33,  0.27};
constexpr Curve fl11{0.91,  0.63, 0.46, 0.37, 1.29,  12.68, 1.59,  1.79,  2.46,  3.33, 4.49, 33.94, 12.13, 6.95,
                     7.19,  7.12, 6.72, 6.13, 5.46,  4.79,  5.66,  14.29, 14.96, 8.97, 4.72, 2.33,  1.47,  1.1,
                     0.89,  0.83, 1.18, 4.9,  39.59, 72.84, 32.61, 7.52,  2.83,  1.96, 1.67, 4.43,  11.28, 14.76,
                     12.73, 9.74, 7.33, 9.72, 55.27, 42.58, 13.18, 13.16, 12.26, 5.11, 2.07, 2.34,  3.58,  3.01,
                     2.48,  2.14, 1.54, 1.33, 1.46,  1.94,  2,     1.2,   1.35,  4.1,  5.58, 2.51,  0.57,  0.27,
                     0.23,  0.21, 0.24, 0.24, 0.2,   0.24,  0.32,  0.26,  0.16,  0.12, 0.09};

// CIE 15:2004, 3.1: light bulbs. Planck's law at 2848 K with the constant of 1931.
Curve tungsten() {
    constexpr double c2 = 1.435e7, kelvin = 2848, normal = 560; // nm
    Curve power{};
    for (std::size_t i = 0; i < visible::count; ++i) {
        const double nm = visible::wavelength(i);
        power[i] = std::pow(normal / nm, 5) * std::expm1(c2 / (kelvin * normal)) / std::expm1(c2 / (kelvin * nm));
    }
    return power;
}

// CIE 15:2004, 3.2, note 6: the multipliers rounded to three places, values between the tabulated ones on a straight
// line.
Curve daylight(double yellow_blue, double pink_green) {
    Curve power{};
    for (std::size_t i = 0; i < visible::count; ++i) {
        const auto at = [i](const Component& component) { return (component[i / 2] + component[(i + 1) / 2]) / 2; };
        power[i] = at(daylight_mean) + yellow_blue * at(daylight_yellow_blue) + pink_green * at(daylight_pink_green);
    }
    return power;
}

} // namespace

Curve spectral_power(Illuminant illuminant) {
    switch (illuminant) {
    case Illuminant::a: return tungsten();
    case Illuminant::d50: return daylight(-1.039, 0.363);
    case Illuminant::d55: return daylight(-0.785, -0.198);
    case Illuminant::d65: return daylight(-0.295, -0.689);
    case Illuminant::d75: return daylight(0.145, -0.760);
    case Illuminant::f2: return fl2;
    case Illuminant::f11: return fl11;
    }
    return fl2;
}

Xyz white_of(Illuminant illuminant, Observer observer) {
    const bool narrow = observer == Observer::two_degrees;
    switch (illuminant) {
    case Illuminant::a: return narrow ? Xyz{1.09850, 1, 0.35585} : Xyz{1.11144, 1, 0.35200};
    case Illuminant::d50: return narrow ? Xyz{0.96422, 1, 0.82521} : Xyz{0.96720, 1, 0.81427};
    case Illuminant::d55: return narrow ? Xyz{0.95682, 1, 0.92149} : Xyz{0.95799, 1, 0.90926};
    case Illuminant::d65: return narrow ? Xyz{0.95047, 1, 1.08883} : Xyz{0.94811, 1, 1.07304};
    case Illuminant::d75: return narrow ? Xyz{0.94972, 1, 1.22638} : Xyz{0.94416, 1, 1.20641};
    case Illuminant::f2: return narrow ? Xyz{0.99186, 1, 0.67393} : Xyz{1.03279, 1, 0.69027};
    case Illuminant::f11: return narrow ? Xyz{1.00962, 1, 0.64350} : Xyz{1.03863, 1, 0.65607};
    }
    return white_d50;
}

} // namespace dyeleaf
