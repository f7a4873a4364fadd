#include "facts/colour.h"

#include "facts/colour_spaces.h"

#include <algorithm>
#include <cmath>

namespace dyeleaf {

namespace {

using Matrix = std::array<Triple, 3>;

Triple operator*(const Matrix& matrix, const Triple& vector) {
    Triple result{};
    for (std::size_t row = 0; row < 3; ++row) {
        result[row] = matrix[row][0] * vector[0] + matrix[row][1] * vector[1] + matrix[row][2] * vector[2];
    }
    return result;
}

// Linear sRGB and XYZ relative to D65: CSS Color 4, section "Sample code for color conversions".
constexpr Matrix rgb_to_xyz{{{0.41239079926595934, 0.357584339383878, 0.1804807884018343},
                             {0.21263900587151027, 0.715168678767756, 0.07219231536073371},
                             {0.01933081871559182, 0.11919477979462598, 0.9505321522496607}}};
constexpr Matrix xyz_to_rgb{{{3.2409699419045226, -1.537383177570094, -0.4986107602930034},
                             {-0.9692436362808796, 1.8759675015077202, 0.04155505740717559},
                             {0.05563007969699366, -0.20397695888897652, 1.0569715142428786}}};

// Bradford adaptation between D65 and D50, whites from the four-digit chromaticities: CSS Color 4, same section.
constexpr Matrix d65_to_d50{{{1.0479297925449969, 0.022946870601609652, -0.05019226628920524},
                             {0.02962780877005599, 0.9904344267538799, -0.017073799063418826},
                             {-0.009243040646204504, 0.015055191490298152, 0.7518742814281371}}};
constexpr Matrix d50_to_d65{{{0.9554734527042182, -0.023098536874261423, 0.0632593086610217},
                             {-0.028369706963208136, 1.0099954580058226, 0.021041398966943008},
                             {0.012314001688319899, -0.020507696433477912, 1.3303659366080753}}};

// D50 from its chromaticity 0.3457, 0.3585, as CSS Color 4 takes it for `lab()`.
constexpr Triple white{0.3457 / 0.3585, 1.0, (1.0 - 0.3457 - 0.3585) / 0.3585};

// CIE 15:2004, 8.2.1: where the cube root gives way to a straight line.
constexpr double epsilon = 216.0 / 24389.0;
constexpr double kappa = 24389.0 / 27.0;

double lab_curve(double ratio) {
    return ratio > epsilon ? std::cbrt(ratio) : (kappa * ratio + 16) / 116;
}

double lab_curve_inverse(double value) {
    const double cube = value * value * value;
    return cube > epsilon ? cube : (116 * value - 16) / kappa;
}

// Half a step of eight bits: nearer to the gamut than that, the printed colour is the same.
constexpr double gamut_tolerance = 0.5 / 255;

} // namespace

Triple linear_rgb(Rgb colour) {
    return {decoded(colour.red), decoded(colour.green), decoded(colour.blue)};
}

Triple linear_rgb(Lab colour) {
    const double y = (colour.lightness + 16) / 116;
    const double x = y + colour.a / 500;
    const double z = y - colour.b / 200;
    const Triple d50{white[0] * lab_curve_inverse(x), white[1] * lab_curve_inverse(y), white[2] * lab_curve_inverse(z)};
    return xyz_to_rgb * (d50_to_d65 * d50);
}

RgbResult to_rgb(Lab colour) {
    RgbResult result{{}, true};
    Triple channels{};
    const Triple linear = linear_rgb(colour);
    for (std::size_t i = 0; i < 3; ++i) {
        const double value = coded(linear[i]);
        channels[i] = std::clamp(value, 0.0, 1.0);
        if (std::abs(channels[i] - value) > gamut_tolerance) result.in_gamut = false;
    }
    result.colour = {channels[0], channels[1], channels[2]};
    return result;
}

Lab to_lab(Rgb colour) {
    const Triple d50 = d65_to_d50 * (rgb_to_xyz * linear_rgb(colour));
    const double x = lab_curve(d50[0] / white[0]);
    const double y = lab_curve(d50[1] / white[1]);
    const double z = lab_curve(d50[2] / white[2]);
    return {116 * y - 16, 500 * (x - y), 200 * (y - z)};
}

double chroma(Lab colour) {
    return std::hypot(colour.a, colour.b);
}

// WCAG 2.2, "contrast ratio".
double contrast_ratio(Rgb a, Rgb b) {
    const double first = luminance(a);
    const double second = luminance(b);
    return (std::max(first, second) + 0.05) / (std::min(first, second) + 0.05);
}

Rgb black_or_white_on(Rgb ground) {
    constexpr Rgb black{0, 0, 0};
    constexpr Rgb paper{1, 1, 1};
    return contrast_ratio(black, ground) >= contrast_ratio(paper, ground) ? black : paper;
}

} // namespace dyeleaf
