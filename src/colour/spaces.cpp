#include "colour/spaces.h"

#include "colour/xyz.h"

#include <algorithm>
#include <cmath>

namespace dyeleaf {

namespace {

// Linear sRGB and XYZ relative to D65: CSS Color 4, section "Sample code for color conversions".
constexpr Matrix rgb_to_xyz{{{0.41239079926595934, 0.357584339383878, 0.1804807884018343},
                             {0.21263900587151027, 0.715168678767756, 0.07219231536073371},
                             {0.01933081871559182, 0.11919477979462598, 0.9505321522496607}}};
constexpr Matrix xyz_to_rgb{{{3.2409699419045226, -1.537383177570094, -0.4986107602930034},
                             {-0.9692436362808796, 1.8759675015077202, 0.04155505740717559},
                             {0.05563007969699366, -0.20397695888897652, 1.0569715142428786}}};

// Linear Display P3 to XYZ relative to D65: the same section.
constexpr Matrix p3_to_xyz{{{608311.0 / 1250200, 189793.0 / 714400, 198249.0 / 1000160},
                            {35783.0 / 156275, 247089.0 / 357200, 198249.0 / 2500400},
                            {0, 32229.0 / 714400, 5220557.0 / 5000800}}};

// Half a step of eight bits: nearer to the gamut than that, the printed colour is the same.
constexpr double gamut_tolerance = 0.5 / 255;

Lab lab_under_d65(const Triple& xyz) {
    return to_lab(adapted({xyz[0], xyz[1], xyz[2]}, white_d65, white_d50));
}

} // namespace

Triple linear_rgb(Rgb colour) {
    return {decoded(colour.red), decoded(colour.green), decoded(colour.blue)};
}

Triple linear_rgb(Lab colour) {
    const Xyz d65 = adapted(to_xyz(colour), white_d50, white_d65);
    return xyz_to_rgb * Triple{d65.x, d65.y, d65.z};
}

RgbResult to_rgb(Lab colour) {
    RgbResult result{{}, true};
    Triple channels{};
    const Triple linear = linear_rgb(colour);
    for (std::size_t i = 0; i < 3; ++i) {
        const double value = coded(linear[i]);
        channels[i] = std::clamp(value, 0.0, 1.0);
        if (std::abs(channels[i] - value) > gamut_tolerance) result.in_gamut = false;
    }
    result.colour = {channels[0], channels[1], channels[2]};
    return result;
}

Lab lab_of_linear_rgb(const Triple& linear) {
    return lab_under_d65(rgb_to_xyz * linear);
}

Lab lab_of_display_p3(const Triple& coded) {
    return lab_under_d65(p3_to_xyz * Triple{decoded(coded[0]), decoded(coded[1]), decoded(coded[2])});
}

Lab to_lab(Rgb colour) {
    return lab_of_linear_rgb(linear_rgb(colour));
}

} // namespace dyeleaf
