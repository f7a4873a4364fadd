#include "colour/xyz.h"

#include "colour/matrix.h"

#include <cmath>

namespace dyeleaf {

namespace {

// Bradford's cone responses (ICC.1:2022, annex E) and the way back, to double precision.
constexpr Matrix bradford{{{0.8951, 0.2664, -0.1614}, {-0.7502, 1.7135, 0.0367}, {0.0389, -0.0685, 1.0296}}};

constexpr Matrix from_bradford = inverse(bradford);

constexpr Triple triple(Xyz colour) {
    return {colour.x, colour.y, colour.z};
}

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

} // namespace

Xyz adapted(Xyz colour, Xyz from, Xyz to) {
    const Triple source = bradford * triple(from);
    const Triple target = bradford * triple(to);
    Triple response = bradford * triple(colour);
    for (std::size_t i = 0; i < 3; ++i)
        response[i] *= target[i] / source[i];
    const Triple result = from_bradford * response;
    return {result[0], result[1], result[2]};
}

Lab to_lab(Xyz colour, Xyz white) {
    const double x = lab_curve(colour.x / white.x);
    const double y = lab_curve(colour.y / white.y);
    const double z = lab_curve(colour.z / white.z);
    return {116 * y - 16, 500 * (x - y), 200 * (y - z)};
}

Xyz to_xyz(Lab colour, Xyz white) {
    const double y = (colour.lightness + 16) / 116;
    return {white.x * lab_curve_inverse(y + colour.a / 500), white.y * lab_curve_inverse(y),
            white.z * lab_curve_inverse(y - colour.b / 200)};
}

Lab to_lab(Xyz relative_to_d50) {
    return to_lab(relative_to_d50, white_d50);
}

Xyz to_xyz(Lab colour) {
    return to_xyz(colour, white_d50);
}

double chroma(Lab colour) {
    return std::hypot(colour.a, colour.b);
}

} // namespace dyeleaf
