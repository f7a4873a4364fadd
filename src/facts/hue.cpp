#include "facts/hue.h"

#include "facts/colour.h"
#include "facts/colour_spaces.h"

#include <array>
#include <cmath>
#include <numbers>

namespace dyeleaf {

namespace {

// Below this chroma in CIELAB a colour reads as a grey and its hue tells nothing (our own figure).
constexpr double least_chroma = 10;

// Hue angle in degrees, 0 to 360, in Oklab (B. Ottosson, "A perceptual color space for image processing", 2020; its
// matrices for linear sRGB). CIELAB will not do here: in it a navy blue and a lavender have the same hue.
double hue(Lab colour) {
    const Triple rgb = linear_rgb(colour);
    const double l = std::cbrt(0.4122214708 * rgb[0] + 0.5363325363 * rgb[1] + 0.0514459929 * rgb[2]);
    const double m = std::cbrt(0.2119034982 * rgb[0] + 0.6806995451 * rgb[1] + 0.1073969566 * rgb[2]);
    const double s = std::cbrt(0.0883024619 * rgb[0] + 0.2817188376 * rgb[1] + 0.6299787005 * rgb[2]);
    const double a = 1.9779984951 * l - 2.4285922050 * m + 0.4505937099 * s;
    const double b = 0.0259040371 * l + 0.7827717662 * m - 0.8086757660 * s;
    const double degrees = std::atan2(b, a) * 180 / std::numbers::pi;
    return degrees < 0 ? degrees + 360 : degrees;
}

// The circle is opened between violet and pink.
constexpr double first_hue = 345;

struct Sector {
    HueFamily family;
    double end; // degrees past `first_hue`
};

// The boundaries are our own, set by eye: hues 345, 15, 40, 85, 115, 165, 220, 285 and 345.
constexpr std::array sectors{
    Sector{HueFamily::pink, 30},    Sector{HueFamily::red, 55},     Sector{HueFamily::orange_brown, 100},
    Sector{HueFamily::yellow, 130}, Sector{HueFamily::green, 180},  Sector{HueFamily::turquoise, 235},
    Sector{HueFamily::blue, 300},   Sector{HueFamily::violet, 360},
};

double past_first(Lab colour) {
    return std::fmod(hue(colour) - first_hue + 360, 360);
}

} // namespace

HueFamily hue_family(Lab colour) {
    if (chroma(colour) < least_chroma) return HueFamily::grey;
    const double angle = past_first(colour);
    for (const Sector& sector : sectors) {
        if (angle < sector.end) return sector.family;
    }
    return HueFamily::violet;
}

HueKey hue_key(const std::optional<Lab>& colour) {
    if (!colour) return {static_cast<int>(HueFamily::grey) + 1, 0};
    const HueFamily family = hue_family(*colour);
    return {static_cast<int>(family), family == HueFamily::grey ? -colour->lightness : past_first(*colour)};
}

} // namespace dyeleaf
