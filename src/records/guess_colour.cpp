#include "records/guess_colour.h"

#include "base/colour.h"
#include "base/number.h"
#include "source/amounts.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace dyeleaf {

namespace {

bool is_hex_digit(char c) {
    return (c >= '0' && c <= '9') || (c >= 'a' && c <= 'f') || (c >= 'A' && c <= 'F');
}

// All numbers in a text, whatever stands between them.
std::vector<double> numbers_in(std::string_view text) {
    std::vector<double> numbers;
    std::string word;
    for (const char c : std::string{text} + " ") {
        const bool part = (c >= '0' && c <= '9') || c == '.' || ((c == '-' || c == '+') && word.empty());
        if (part) word += c;
        if (part || word.empty()) continue;
        if (const auto number = parse_decimal(word)) numbers.push_back(*number);
        word.clear();
    }
    return numbers;
}

std::optional<Triple> three_numbers_in(std::string_view text) {
    const auto numbers = numbers_in(text);
    return numbers.size() == 3 ? std::optional{Triple{numbers[0], numbers[1], numbers[2]}} : std::nullopt;
}

std::optional<std::string> bytes_as_hex(const Triple& values) {
    const auto is_byte = [](double value) { return value >= 0 && value <= 255 && value == std::round(value); };
    if (!std::ranges::all_of(values, is_byte)) return std::nullopt;
    return "\"" + to_hex({values[0] / 255, values[1] / 255, values[2] / 255}) + "\"";
}

Complaint about_hex(std::string_view text) {
    const std::string_view digits = text.substr(1);
    if (!std::ranges::all_of(digits, is_hex_digit)) {
        return {shown(text) + " is not a colour",
                R"(after the # stand digits and the letters a to f only, as in "#8d7fa8")"};
    }
    return {shown(text) + " has " + counted(static_cast<int>(digits.size()), "digit", "digits") +
                " after the #, and a colour has 6 or 3",
            R"(write six, as in "#8d7fa8")"};
}

// "L* 31 a* 12 b* -24", "CIELAB 31 12 -24", "L: 31, C: 27, h: 297".
std::optional<std::string> as_instruments_show_it(const std::string& lower) {
    const auto values = three_numbers_in(lower);
    if (!values || !(lower.starts_with('l') || lower.starts_with("cie"))) return std::nullopt;
    const bool polar = lower.find('h') != std::string::npos;
    std::string written = polar ? "lch(" : "lab(";
    for (const double value : *values)
        written += (written.ends_with('(') ? "" : " ") + decimal(value, 4);
    return "\"" + written + ")\"";
}

} // namespace

std::optional<std::string> about_bytes(const Triple& values) {
    const auto hex = bytes_as_hex(values);
    return hex ? std::optional{"from 0 to 255 it is " + *hex} : std::nullopt;
}

Complaint guess_colour(std::string_view text) {
    const std::string lower = lower_case(text);
    const std::string not_one = shown(text) + " is not a colour";
    if (const auto bare = within_curly_quotes(text))
        return {"the quotation marks of this colour are curly", "write \"" + *bare + "\", with straight ones"};
    if (text.starts_with('#')) return about_hex(text);
    if (parse_hex("#" + std::string{text}))
        return {not_one, "put # before it, in quotes: \"#" + std::string{text} + "\""};
    const auto values = lower.starts_with("rgb") ? three_numbers_in(lower) : std::nullopt;
    if (const auto hex = values ? bytes_as_hex(*values) : std::nullopt)
        return {not_one + " as records write it", "write " + *hex + ", with the quotes"};
    if (lower.starts_with("color("))
        return {not_one + " of a kind that is read",
                "color( ) begins with srgb or display-p3, as in \"color(srgb 0.55 0.5 0.66)\""};
    if (const auto lab = as_instruments_show_it(lower)) return {not_one + " as records write it", "write " + *lab};
    return {not_one, "write it as \"#8d7fa8\" or as \"lab(31 12 -24)\", with the quotes"};
}

} // namespace dyeleaf
