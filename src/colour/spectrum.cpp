#include "colour/spectrum.h"

#include <algorithm>
#include <cmath>

namespace dyeleaf {

namespace {

// The light that comes back, summed over wavelengths; a perfect white has Y 1 (CIE 15:2004, 7.1).
Xyz sum(const Curve& reflectance, Illuminant illuminant, Observer observer) {
    const Curve light = spectral_power(illuminant);
    const auto& functions = matching_functions(observer);
    Triple total{};
    double white = 0;
    for (std::size_t i = 0; i < visible::count; ++i) {
        white += light[i] * functions[i][1];
        for (std::size_t channel = 0; channel < total.size(); ++channel)
            total[channel] += reflectance[i] * light[i] * functions[i][channel];
    }
    return {total[0] / white, total[1] / white, total[2] / white};
}

Xyz perfect_white(Illuminant illuminant, Observer observer) {
    Curve all{};
    all.fill(1);
    return sum(all, illuminant, observer);
}

} // namespace

int last_wavelength(const Spectrum& spectrum) {
    return spectrum.from + spectrum.step * (static_cast<int>(spectrum.reflectance.size()) - 1);
}

double reflectance_at(const Spectrum& spectrum, double nanometres) {
    const auto measured = [&](double index) {
        const double last = static_cast<double>(spectrum.reflectance.size()) - 1;
        return spectrum.reflectance[static_cast<std::size_t>(std::clamp(index, 0.0, last))];
    };
    const double position = (nanometres - spectrum.from) / spectrum.step;
    const double before = std::floor(position);
    const double t = position - before;
    // Lagrange's coefficients for points at -1, 0, 1 and 2.
    return -t * (t - 1) * (t - 2) / 6 * measured(before - 1) + (t + 1) * (t - 1) * (t - 2) / 2 * measured(before) -
           (t + 1) * t * (t - 2) / 2 * measured(before + 1) + (t + 1) * t * (t - 1) / 6 * measured(before + 2);
}

Curve reflectance_curve(const Spectrum& spectrum) {
    Curve curve{};
    for (std::size_t i = 0; i < visible::count; ++i)
        curve[i] = reflectance_at(spectrum, visible::wavelength(i));
    return curve;
}

Spectrum spectrum_of(const Curve& reflectance) {
    return {visible::from, visible::step, {reflectance.begin(), reflectance.end()}};
}

Xyz to_xyz(const Spectrum& spectrum, Illuminant illuminant, Observer observer) {
    return sum(reflectance_curve(spectrum), illuminant, observer);
}

Lab to_lab(const Spectrum& spectrum, Illuminant illuminant, Observer observer) {
    return to_lab(to_xyz(spectrum, illuminant, observer), perfect_white(illuminant, observer));
}

Lab to_lab(const Spectrum& spectrum) {
    return to_lab(spectrum, Illuminant::d50, Observer::two_degrees);
}

} // namespace dyeleaf
