#include "records/colour_notation.h"

#include "base/number.h"
#include "colour/oklab.h"
#include "colour/spaces.h"
#include "records/guess_colour.h"
#include "records/light.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace dyeleaf {

namespace {

// Numbers that lie side by side in the brackets of one notation.
struct Channel {
    std::string_view name;
    double hundred_percent; // 0: an angle
    double least, most;     // of what dyed fibre can be
};

struct Notation {
    std::string_view name, called;
    Channel channels[3];
    std::string_view example;
    RecordedColour (*colour)(const Triple& values);
};

constexpr double degrees_per_turn = 360;

Lab from_polar(double lightness, double strength, double degrees) {
    const double angle = degrees * 2 * std::numbers::pi / degrees_per_turn;
    return {lightness, strength * std::cos(angle), strength * std::sin(angle)};
}

RecordedColour lab(const Triple& v) {
    return Lab{v[0], v[1], v[2]};
}
RecordedColour lch(const Triple& v) {
    return from_polar(v[0], v[1], v[2]);
}
RecordedColour oklab(const Triple& v) {
    return to_lab(Oklab{v[0], v[1], v[2]});
}
RecordedColour oklch(const Triple& v) {
    const Lab flat = from_polar(v[0], v[1], v[2]);
    return to_lab(Oklab{flat.lightness, flat.a, flat.b});
}
RecordedColour srgb(const Triple& v) {
    return Rgb{v[0], v[1], v[2]};
}
RecordedColour display_p3(const Triple& v) {
    return lab_of_display_p3(v);
}

// What 100 % is: CSS Color 4, sections on each notation. The limits lie beyond the strongest surface colours.
constexpr Notation notations[] = {
    {"lab",
     "a Lab colour",
     {{"lightness", 100, 0, 100}, {"a", 125, -160, 160}, {"b", 125, -160, 160}},
     "lab(31 12 -24)",
     lab},
    {"lch",
     "an LCh colour",
     {{"lightness", 100, 0, 100}, {"chroma", 150, 0, 200}, {"hue", 0, 0, 0}},
     "lch(31 27 297)",
     lch},
    {"oklab",
     "an Oklab colour",
     {{"lightness", 1, 0, 1}, {"a", 0.4, -0.5, 0.5}, {"b", 0.4, -0.5, 0.5}},
     "oklab(0.42 0.03 -0.07)",
     oklab},
    {"oklch",
     "an Oklch colour",
     {{"lightness", 1, 0, 1}, {"chroma", 0.4, 0, 0.5}, {"hue", 0, 0, 0}},
     "oklch(0.42 0.08 293)",
     oklch},
    {"color(srgb",
     "an sRGB colour",
     {{"red", 1, 0, 1}, {"green", 1, 0, 1}, {"blue", 1, 0, 1}},
     "color(srgb 0.55 0.5 0.66)",
     srgb},
    {"color(display-p3",
     "a Display P3 colour",
     {{"red", 1, 0, 1}, {"green", 1, 0, 1}, {"blue", 1, 0, 1}},
     "color(display-p3 0.54 0.5 0.65)",
     display_p3},
};

// "lab(31 12 -24 / 1) under D65" in its parts.
struct Call {
    std::string name;                  // "lab", "color(srgb"
    std::vector<std::string> values;   // before the stroke
    std::optional<std::string> alpha;  // after it
    std::optional<std::string> behind; // what stands behind the bracket
};

std::optional<Call> split_call(const std::string& written) {
    const std::string text = lower_case(written);
    const std::size_t open = text.find('('), close = text.find(')');
    if (open == std::string::npos || close == std::string::npos || close < open) return std::nullopt;
    Call call{std::string{trimmed(text.substr(0, open))}, {}, {}, {}};
    const std::string inside = text.substr(open + 1, close - open - 1);
    const std::size_t stroke = std::min(inside.find('/'), inside.size());
    if (stroke < inside.size()) call.alpha = trimmed(inside.substr(stroke + 1));
    std::string word;
    for (const char c : inside.substr(0, stroke) + " ") {
        const bool between = c == ' ' || c == '\t';
        if (!between) word += c;
        if (between && !word.empty()) call.values.push_back(std::exchange(word, {}));
    }
    if (call.name == "color" && !call.values.empty()) {
        call.name += "(" + call.values.front();
        call.values.erase(call.values.begin());
    }
    const auto behind = trimmed(std::string_view{written}.substr(close + 1));
    if (!behind.empty()) call.behind = behind;
    return call;
}

std::optional<double> degrees(std::string_view text) {
    constexpr std::pair<std::string_view, double> units[] = {{"deg", 1},
                                                             {"grad", degrees_per_turn / 400},
                                                             {"rad", degrees_per_turn / (2 * std::numbers::pi)},
                                                             {"turn", degrees_per_turn},
                                                             {"°", 1}};
    for (const auto& [unit, factor] : units) {
        if (!text.ends_with(unit)) continue;
        const auto number = parse_decimal(text.substr(0, text.size() - unit.size()));
        return number ? std::optional{*number * factor} : std::nullopt;
    }
    return parse_decimal(text);
}

std::optional<double> channel_value(std::string_view text, const Channel& channel) {
    if (text == "none") return 0;
    if (channel.hundred_percent == 0) return degrees(text);
    if (!text.ends_with('%')) return parse_decimal(text);
    const auto share = parse_decimal(text.substr(0, text.size() - 1));
    return share ? std::optional{*share / 100 * channel.hundred_percent} : std::nullopt;
}

bool is_lightness(const Channel& channel) {
    return channel.name == "lightness";
}

std::string first_of(const std::string& example) {
    return "the first number in " + example.substr(0, example.find('(')) + "( ) is the lightness, from 0 for black to ";
}

std::optional<Complaint> about_range(const Notation& notation, const Triple& values) {
    const std::string example{notation.example};
    for (std::size_t i = 0; i < values.size(); ++i) {
        const Channel& channel = notation.channels[i];
        const double value = values[i];
        const bool in_range = value >= channel.least && value <= channel.most;
        if (channel.hundred_percent == 0 || in_range) continue;
        const std::string written = decimal(value, 4), name{channel.name};
        if (is_lightness(channel) && channel.most == 1) {
            return Complaint{"a lightness of " + written + " is no colour",
                             first_of(example) + "1 for white, or from 0 % to 100 %"};
        }
        if (is_lightness(channel)) {
            return Complaint{"a lightness of " + written + " is no colour",
                             first_of(example) + decimal(channel.most, 0) + " for white"};
        }
        if (notation.name.starts_with("color(")) {
            const bool is_srgb = notation.name.find("srgb") != std::string_view::npos; // hex is nothing else
            return Complaint{name + " is " + written + ", and lies between 0 and 1 here",
                             (is_srgb ? about_bytes(values) : std::nullopt)
                                 .value_or("write it as in \"" + example + "\"; per cent take a % behind each")};
        }
        if (value < channel.least && channel.least == 0)
            return Complaint{"a chroma of " + written + " is no colour", "chroma begins at 0, which is grey"};
        const std::string where = notation.name.ends_with("lab") ? "the second and third number in " : "the chroma in ";
        return Complaint{written + " is stronger than any colour",
                         where + std::string{notation.name} + "( ) lie" + (name == "chroma" ? "s" : "") + " between " +
                             decimal(channel.least, 1) + " and " + decimal(channel.most, 1)};
    }
    // Black as yarn never is: a white or a grey that was meant for Oklab.
    const bool of_hundred = notation.channels[0].most == 100 && is_lightness(notation.channels[0]);
    if (!of_hundred || values[0] == 0 || values[0] > 1) return std::nullopt;
    return Complaint{"a lightness of " + decimal(values[0], 4) + " is blacker than any yarn",
                     "in " + std::string{notation.name} +
                         "( ) it goes from 0 for black to 100 for white; where it goes " + "to 1, write ok" +
                         std::string{notation.name} + "( ), or % behind it if it is a share"};
}

std::optional<Complaint> about_alpha(const std::optional<std::string>& alpha) {
    if (!alpha) return std::nullopt;
    const bool percent = alpha->ends_with('%');
    const auto value = parse_decimal(percent ? alpha->substr(0, alpha->size() - 1) : *alpha);
    if (value && *value == (percent ? 100 : 1)) return std::nullopt;
    return Complaint{"a swatch is not transparent, and this colour is",
                     "leave out / " + *alpha + ", and everything else as it is"};
}

// Every comma as a space, or as a decimal point where a digit follows.
std::string without_commas(std::string_view text, bool decimal) {
    std::string result{text};
    for (std::size_t i = 0; i < result.size(); ++i) {
        if (result[i] != ',') continue;
        const bool digit_follows = i + 1 < result.size() && result[i + 1] >= '0' && result[i + 1] <= '9';
        result[i] = decimal && digit_follows ? '.' : ' ';
        if (result[i] == ' ' && i + 1 < result.size() && result[i + 1] == ' ') result.erase(i, 1);
    }
    return result;
}

Complaint about_form(std::string_view text, const Notation& notation) {
    for (const bool decimal : {false, true}) {
        const std::string candidate = without_commas(text, decimal);
        if (candidate != text && std::holds_alternative<RecordedColour>(parse_colour(candidate)))
            return {shown(text) + " is not " + std::string{notation.called},
                    "write \"" + candidate + "\", without commas"};
    }
    std::string names;
    for (std::size_t i = 0; i < 3; ++i)
        names += (i == 0 ? "" : i == 2 ? " and " : ", ") + std::string{notation.channels[i].name};
    return {shown(text) + " is not " + std::string{notation.called},
            "write " + names + " with spaces between them, as in \"" + std::string{notation.example} + "\""};
}

std::variant<RecordedColour, Complaint> under_light(const Notation& notation, const RecordedColour& colour,
                                                    std::string_view behind) {
    if (notation.name != "lab" && notation.name != "lch") {
        return Complaint{"only lab( ) and lch( ) depend on a light, and " + shown(behind) + " names one",
                         "leave it out"};
    }
    const auto light = parse_light(behind);
    if (const auto* complaint = std::get_if<Complaint>(&light)) return *complaint;
    const Xyz white = white_of(std::get<Light>(light));
    return RecordedColour{to_lab(adapted(to_xyz(std::get<Lab>(colour), white), white, white_d50))};
}

} // namespace

std::variant<RecordedColour, Complaint> parse_colour(std::string_view text) {
    if (const auto rgb = parse_hex(text)) return RecordedColour{*rgb};
    const auto call = split_call(std::string{text});
    const auto* notation = call ? std::ranges::find(notations, call->name, &Notation::name) : std::end(notations);
    if (notation == std::end(notations)) return guess_colour(text);
    Triple values{};
    if (call->values.size() != values.size()) return about_form(text, *notation);
    for (std::size_t i = 0; i < values.size(); ++i) {
        const auto value = channel_value(call->values[i], notation->channels[i]);
        if (!value) return about_form(text, *notation);
        values[i] = *value;
    }
    if (auto complaint = about_alpha(call->alpha)) return std::move(*complaint);
    if (auto complaint = about_range(*notation, values)) return std::move(*complaint);
    const RecordedColour colour = notation->colour(values);
    return call->behind ? under_light(*notation, colour, *call->behind) : colour;
}

} // namespace dyeleaf
