// Three numbers and the linear maps between them.
#pragma once

#include <array>

namespace dyeleaf {

using Triple = std::array<double, 3>;
using Matrix = std::array<Triple, 3>; // by rows

constexpr Triple operator*(const Matrix& matrix, const Triple& vector) {
    Triple result{};
    for (std::size_t row = 0; row < 3; ++row)
        result[row] = matrix[row][0] * vector[0] + matrix[row][1] * vector[1] + matrix[row][2] * vector[2];
    return result;
}

constexpr Matrix operator*(const Matrix& a, const Matrix& b) {
    Matrix result{};
    for (std::size_t row = 0; row < 3; ++row) {
        for (std::size_t column = 0; column < 3; ++column)
            result[row][column] = a[row][0] * b[0][column] + a[row][1] * b[1][column] + a[row][2] * b[2][column];
    }
    return result;
}

} // namespace dyeleaf
