#include "base/colour.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <fmt/format.h>

namespace dyeleaf {

std::optional<Rgb> parse_hex(std::string_view text) {
    if (text.empty() || text.front() != '#') return std::nullopt;
    text.remove_prefix(1);
    if (text.size() != 3 && text.size() != 6) return std::nullopt;
    const std::size_t digits = text.size() / 3;
    const auto channel = [&](std::size_t index) -> std::optional<double> {
        const std::string_view part = text.substr(index * digits, digits);
        unsigned value = 0;
        const auto [end, error] = std::from_chars(part.data(), part.data() + digits, value, 16);
        if (error != std::errc{} || end != part.data() + digits) return std::nullopt;
        return (digits == 1 ? value * 17 : value) / 255.0;
    };
    const auto red = channel(0);
    const auto green = channel(1);
    const auto blue = channel(2);
    if (!red || !green || !blue) return std::nullopt;
    return Rgb{*red, *green, *blue};
}

std::string to_hex(Rgb colour) {
    const auto byte = [](double channel) { return static_cast<int>(std::lround(std::clamp(channel, 0.0, 1.0) * 255)); };
    return fmt::format("#{:02x}{:02x}{:02x}", byte(colour.red), byte(colour.green), byte(colour.blue));
}

// IEC 61966-2-1:1999.
double decoded(double coded) {
    const double size = std::abs(coded);
    const double linear = size <= 0.04045 ? size / 12.92 : std::pow((size + 0.055) / 1.055, 2.4);
    return std::copysign(linear, coded);
}

double coded(double linear) {
    const double size = std::abs(linear);
    const double value = size <= 0.0031308 ? 12.92 * size : 1.055 * std::pow(size, 1 / 2.4) - 0.055;
    return std::copysign(value, linear);
}

// WCAG 2.2, "relative luminance".
double luminance(Rgb colour) {
    return 0.2126 * decoded(colour.red) + 0.7152 * decoded(colour.green) + 0.0722 * decoded(colour.blue);
}

Rgb in_grey(Rgb colour) {
    const double value = std::clamp(coded(luminance(colour)), 0.0, 1.0);
    return {value, value, value};
}

} // namespace dyeleaf
