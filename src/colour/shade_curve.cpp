#include "colour/shade_curve.h"

#include "colour/kubelka_munk.h"
#include "colour/matrix.h"
#include "colour/xyz.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace dyeleaf {

namespace {

// XYZ to the responses of long, medium and short waves (C. Li and others, "Comprehensive color solutions: CAM16, CAT16,
// and CAM16-UCS", Color Research and Application 42, 2017; CIE 248:2022). No real colour has a negative one.
constexpr Matrix cat16{
    {{0.401288, 0.650173, -0.051461}, {-0.250268, 1.204414, 0.045854}, {-0.002079, 0.048952, 0.953127}}};
constexpr Matrix from_cat16 = inverse(cat16);
constexpr Triple white = cat16 * Triple{white_d50.x, white_d50.y, white_d50.z};

// Keeps the logarithm of next to nothing finite. Any value from a ten-thousandth to a hundredth estimates the same.
constexpr double least_absorption = 0.001;

double log_absorption(double reflectance) {
    return std::log(absorption_ratio(reflectance) + least_absorption);
}

double reflectance_from(double log_absorption) {
    return reflectance_of(std::max(0.0, std::exp(log_absorption) - least_absorption));
}

MonotoneCurve band(const std::vector<Shade>& shades, std::size_t which) {
    std::vector<double> depths;
    std::vector<double> absorptions;
    for (const Shade& shade : shades) {
        const Xyz colour = to_xyz(shade.colour);
        const Triple responses = cat16 * Triple{colour.x, colour.y, colour.z};
        depths.push_back(std::log(shade.depth.number()));
        absorptions.push_back(log_absorption(responses[which] / white[which]));
    }
    return {std::move(depths), std::move(absorptions)};
}

} // namespace

ShadeCurve::ShadeCurve(const std::vector<Shade>& shades) : bands_{band(shades, 0), band(shades, 1), band(shades, 2)} {}

Lab ShadeCurve::at(Percent depth) const {
    Triple responses = white;
    for (std::size_t i = 0; i < 3; ++i)
        responses[i] *= reflectance_from(bands_[i].at(std::log(depth.number())));
    const Triple colour = from_cat16 * responses;
    return to_lab(Xyz{colour[0], colour[1], colour[2]});
}

} // namespace dyeleaf
