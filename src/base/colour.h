// Colours as they are recorded and as they are painted.
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace dyeleaf {

// sRGB (IEC 61966-2-1), each channel coded, 0 to 1.
struct Rgb {
    double red = 0, green = 0, blue = 0;
    friend constexpr bool operator==(Rgb, Rgb) = default;
};

// CIELAB relative to D50, as CSS Color 4 `lab()` has it: lightness 0 to 100, a and b about -125 to 125.
struct Lab {
    double lightness = 0, a = 0, b = 0;
    friend constexpr bool operator==(Lab, Lab) = default;
};

// "#8d7fa8" or "#abc"; nothing else.
std::optional<Rgb> parse_hex(std::string_view text);
std::string to_hex(Rgb colour);

// One sRGB channel: light in proportion to what is emitted, and the value as coded. Both go on below 0 and above 1,
// mirrored at 0, so that a colour outside sRGB keeps its hue.
double decoded(double coded);
double coded(double linear);

// Relative luminance, 0 for black to 1 for white.
double luminance(Rgb colour);
// The grey that is as light.
Rgb in_grey(Rgb colour);

} // namespace dyeleaf
