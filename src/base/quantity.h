// Masses, volumes, shares and densities: numbers that cannot be taken for one another.
#pragma once

#include <compare>

namespace dyeleaf {

template <class Unit> class Quantity {
  public:
    constexpr Quantity() = default;
    constexpr explicit Quantity(double value) : value_(value) {}

    // The number in the quantity's own unit, named by the functions below.
    [[nodiscard]] constexpr double number() const { return value_; }

    friend constexpr Quantity operator+(Quantity a, Quantity b) { return Quantity{a.value_ + b.value_}; }
    friend constexpr Quantity operator-(Quantity a, Quantity b) { return Quantity{a.value_ - b.value_}; }
    friend constexpr Quantity operator*(Quantity a, double k) { return Quantity{a.value_ * k}; }
    friend constexpr Quantity operator/(Quantity a, double k) { return Quantity{a.value_ / k}; }
    friend constexpr double operator/(Quantity a, Quantity b) { return a.value_ / b.value_; }
    friend constexpr auto operator<=>(Quantity, Quantity) = default;

  private:
    double value_ = 0;
};

using Mass = Quantity<struct InGrams>;
using Volume = Quantity<struct InMillilitres>;
using Density = Quantity<struct InGramsPerMillilitre>;
using Percent = Quantity<struct InHundredths>;
using ArealDensity = Quantity<struct InNumberPerSquareCentimetre>; // how many lie on a surface

constexpr Mass grams(double value) {
    return Mass{value};
}
constexpr Volume millilitres(double value) {
    return Volume{value};
}
constexpr Density grams_per_millilitre(double value) {
    return Density{value};
}
constexpr Percent percent(double value) {
    return Percent{value};
}
constexpr ArealDensity per_square_centimetre(double value) {
    return ArealDensity{value};
}

constexpr Mass operator*(Volume volume, Density density) {
    return grams(volume.number() * density.number());
}
constexpr Volume operator/(Mass mass, Density density) {
    return millilitres(mass.number() / density.number());
}

} // namespace dyeleaf
