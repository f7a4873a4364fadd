// Points onto points, in numbers without a unit: x' = a x + c y + e, y' = b x + d y + f (ISO 32000-1, 8.3.3).
#pragma once

#include <utility>

namespace dyeleaf {

struct PageMatrix {
    double a = 1, b = 0, c = 0, d = 1, e = 0, f = 0;

    [[nodiscard]] constexpr std::pair<double, double> apply(double x, double y) const {
        return {a * x + c * y + e, b * x + d * y + f};
    }
    // First `inner`, then this.
    [[nodiscard]] constexpr PageMatrix after(const PageMatrix& inner) const {
        const auto [x, y] = apply(inner.e, inner.f);
        return {a * inner.a + c * inner.b,
                b * inner.a + d * inner.b,
                a * inner.c + c * inner.d,
                b * inner.c + d * inner.d,
                x,
                y};
    }
    // Requires: it does not flatten everything.
    [[nodiscard]] constexpr PageMatrix inverse() const {
        const double size = a * d - b * c;
        return {d / size, -b / size, -c / size, a / size, (c * f - d * e) / size, (b * e - a * f) / size};
    }
};

} // namespace dyeleaf
