#include "base/number.h"

#include <charconv>
#include <cmath>
#include <fmt/format.h>

namespace dyeleaf {

namespace {

bool plain_digits(std::string_view text) {
    return !text.empty() && text.find_first_not_of("0123456789.+-") == std::string_view::npos;
}

// Half away from zero on the decimal that the dyer sees: 0.125 to two places is 0.13. The nudge undoes the binary
// error of values such as 1.005.
double rounded(double value, int places) {
    const double scale = std::pow(10.0, places);
    return std::round(value * scale * (1.0 + 1e-12)) / scale;
}

} // namespace

std::optional<double> parse_decimal(std::string_view text) {
    if (!text.empty() && text.front() == '+') text.remove_prefix(1);
    if (!plain_digits(text)) return std::nullopt;
    double value = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value, std::chars_format::fixed);
    if (error != std::errc{} || end != text.data() + text.size()) return std::nullopt;
    return value;
}

std::optional<int> parse_whole(std::string_view text) {
    int value = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (text.empty() || error != std::errc{} || end != text.data() + text.size()) return std::nullopt;
    return value;
}

std::string fixed(double value, int places) {
    std::string text = fmt::format("{:.{}f}", rounded(value, places), places);
    if (text.starts_with('-') && text.find_first_not_of("-0.") == std::string::npos) text.erase(0, 1);
    return text;
}

std::string decimal(double value, int places) {
    std::string text = fixed(value, places);
    if (text.find('.') == std::string::npos) return text;
    text.erase(text.find_last_not_of('0') + 1);
    if (text.back() == '.') text.pop_back();
    return text;
}

std::string significant(double value, int digits) {
    if (value == 0) return "0";
    const int magnitude = static_cast<int>(std::floor(std::log10(std::abs(value)))) + 1;
    const int places = digits - magnitude;
    if (places >= 0) return decimal(value, places);
    const double scale = std::pow(10.0, -places);
    return decimal(std::round(value / scale) * scale, 0);
}

} // namespace dyeleaf
