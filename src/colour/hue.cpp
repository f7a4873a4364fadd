#include "colour/hue.h"

#include "colour/oklab.h"
#include "colour/xyz.h"

#include <array>
#include <cmath>
#include <numbers>

namespace dyeleaf {

namespace {

// Below this chroma in CIELAB a colour reads as a grey and its hue tells nothing (our own figure).
constexpr double least_chroma = 10;

// Hue angle in degrees, 0 to 360, in Oklab. CIELAB will not do here: in it a navy blue and a lavender have the same
// hue.
double hue_in_oklab(Lab colour) {
    const Oklab oklab = to_oklab(colour);
    const double degrees = std::atan2(oklab.b, oklab.a) * 180 / std::numbers::pi;
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
    return std::fmod(hue_in_oklab(colour) - first_hue + 360, 360);
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
