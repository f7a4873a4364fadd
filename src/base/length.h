// A length on paper or of yarn. One type, one unit inside: millimetres.
#pragma once

#include <compare>
#include <string>

namespace dyeleaf {

class Length {
  public:
    constexpr Length() = default;

    [[nodiscard]] constexpr double in_mm() const { return mm_; }
    [[nodiscard]] constexpr double in_pt() const { return mm_ * 72.0 / 25.4; }
    [[nodiscard]] constexpr double in_m() const { return mm_ / 1000.0; }

    constexpr Length& operator+=(Length other) {
        mm_ += other.mm_;
        return *this;
    }
    constexpr Length& operator-=(Length other) {
        mm_ -= other.mm_;
        return *this;
    }
    friend constexpr Length operator+(Length a, Length b) { return Length{a.mm_ + b.mm_}; }
    friend constexpr Length operator-(Length a, Length b) { return Length{a.mm_ - b.mm_}; }
    friend constexpr Length operator-(Length a) { return Length{-a.mm_}; }
    friend constexpr Length operator*(Length a, double k) { return Length{a.mm_ * k}; }
    friend constexpr Length operator*(double k, Length a) { return Length{a.mm_ * k}; }
    friend constexpr Length operator/(Length a, double k) { return Length{a.mm_ / k}; }
    friend constexpr double operator/(Length a, Length b) { return a.mm_ / b.mm_; }
    friend constexpr auto operator<=>(Length, Length) = default;

    friend constexpr Length mm(double value);

  private:
    constexpr explicit Length(double value) : mm_(value) {}
    double mm_ = 0;
};

constexpr Length mm(double value) {
    return Length{value};
}
// The typographic point of PDF and CSS: 1/72 inch.
constexpr Length pt(double value) {
    return mm(value * 25.4 / 72.0);
}
// The international inch of 1959: exactly 25.4 mm.
constexpr Length inches(double value) {
    return mm(value * 25.4);
}
constexpr Length metres(double value) {
    return mm(value * 1000.0);
}

// The one tolerance for "does it fit" and "is it the same": a thousandth of a millimetre.
constexpr Length length_tolerance = mm(0.001);

constexpr bool fits(Length needed, Length available) {
    return needed <= available + length_tolerance;
}
constexpr bool near(Length a, Length b) {
    return fits(a, b) && fits(b, a);
}

constexpr Length smaller(Length a, Length b) {
    return a < b ? a : b;
}
constexpr Length larger(Length a, Length b) {
    return a < b ? b : a;
}

// "40 mm", "12.7 mm": at most two decimals, none that say nothing.
std::string to_string(Length length);

} // namespace dyeleaf
