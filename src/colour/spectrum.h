// How much of the light of each wavelength a colour throws back, as an instrument measures it.
#pragma once

#include "colour/illuminants.h"
#include "colour/observers.h"

#include <vector>

namespace dyeleaf {

// Evenly spaced; at least two values.
struct Spectrum {
    int from = visible::from, step = visible::step; // nm
    std::vector<double> reflectance;                // 1 for a perfect white; what glows in daylight goes over it
    friend bool operator==(const Spectrum&, const Spectrum&) = default;
};

int last_wavelength(const Spectrum& spectrum);

// At any wavelength. Between the measured ones lies the cubic through the four around it (ASTM E2022); beyond the
// first and the last, their value stays (ASTM E308, 7.3.2.2: missing weights go to the last measured value).
double reflectance_at(const Spectrum& spectrum, double nanometres);
// At each of the CIE's wavelengths, so that spectra of different instruments can be mixed.
Curve reflectance_curve(const Spectrum& spectrum);
Spectrum spectrum_of(const Curve& reflectance);

// Y of a perfect white is 1.
Xyz to_xyz(const Spectrum& spectrum, Illuminant illuminant, Observer observer);
// As that light and that eye see it, relative to its own white.
Lab to_lab(const Spectrum& spectrum, Illuminant illuminant, Observer observer);
// CIELAB relative to D50 for the observer of 1931, as all Lab here.
Lab to_lab(const Spectrum& spectrum);

} // namespace dyeleaf
