#include "colour/shade_curve.h"

#include "colour/kubelka_munk.h"
#include "colour/xyz.h"

#include <cmath>

namespace dyeleaf {

namespace {

// Keeps the logarithm of next to nothing finite. Any value from a ten-thousandth to a hundredth estimates the same.
constexpr double least_absorption = 0.001;

double log_absorption(double reflectance) {
    return std::log(absorption_ratio(reflectance) + least_absorption);
}

double reflectance_from(double log_absorption) {
    return reflectance_of(std::max(0.0, std::exp(log_absorption) - least_absorption));
}

MonotoneCurve band(const std::vector<Shade>& shades, std::size_t which) {
    const double white = cone_responses(white_d50)[which];
    std::vector<double> depths;
    std::vector<double> absorptions;
    for (const Shade& shade : shades) {
        depths.push_back(std::log(shade.depth.number()));
        absorptions.push_back(log_absorption(cone_responses(to_xyz(shade.colour))[which] / white));
    }
    return {std::move(depths), std::move(absorptions)};
}

} // namespace

ShadeCurve::ShadeCurve(const std::vector<Shade>& shades)
    : long_(band(shades, 0)), medium_(band(shades, 1)), short_(band(shades, 2)) {}

Lab ShadeCurve::at(Percent depth) const {
    const double x = std::log(depth.number());
    Triple responses = cone_responses(white_d50);
    responses[0] *= reflectance_from(long_.at(x));
    responses[1] *= reflectance_from(medium_.at(x));
    responses[2] *= reflectance_from(short_.at(x));
    return to_lab(from_cone_responses(responses));
}

} // namespace dyeleaf
