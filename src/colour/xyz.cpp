#include "colour/xyz.h"

#include <cmath>

namespace dyeleaf {

namespace {

// Bradford's cone responses (ICC.1:2022, annex E) and the way back, to double precision.
constexpr Matrix cones{{{0.8951, 0.2664, -0.1614}, {-0.7502, 1.7135, 0.0367}, {0.0389, -0.0685, 1.0296}}};

constexpr Matrix inverse(const Matrix& m) {
    const auto minor = [&](std::size_t row, std::size_t column) {
        const std::size_t r1 = (row + 1) % 3, r2 = (row + 2) % 3, c1 = (column + 1) % 3, c2 = (column + 2) % 3;
        return m[r1][c1] * m[r2][c2] - m[r1][c2] * m[r2][c1];
    };
    const double determinant = m[0][0] * minor(0, 0) + m[0][1] * minor(0, 1) + m[0][2] * minor(0, 2);
    Matrix result{};
    for (std::size_t row = 0; row < 3; ++row) {
        for (std::size_t column = 0; column < 3; ++column)
            result[column][row] = minor(row, column) / determinant;
    }
    return result;
}

constexpr Matrix from_cones = inverse(cones);

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

Triple cone_responses(Xyz colour) {
    return cones * Triple{colour.x, colour.y, colour.z};
}

Xyz from_cone_responses(const Triple& responses) {
    const Triple result = from_cones * responses;
    return {result[0], result[1], result[2]};
}

Xyz adapted(Xyz colour, Xyz from, Xyz to) {
    const Triple source = cone_responses(from);
    const Triple target = cone_responses(to);
    Triple response = cone_responses(colour);
    for (std::size_t i = 0; i < 3; ++i)
        response[i] *= target[i] / source[i];
    return from_cone_responses(response);
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
