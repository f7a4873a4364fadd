#include "source/amounts.h"

#include "base/imperial.h"
#include "base/nearest.h"
#include "base/number.h"
#include "base/words.h"

#include <algorithm>
#include <array>
#include <utility>
#include <vector>

namespace dyeleaf {

namespace {

constexpr double inch = inches(1).in_mm();
constexpr double point = pt(1).in_mm();
constexpr std::array paper_units = {Unit{"mm", 1}, Unit{"cm", 10}, Unit{"in", inch}, Unit{"pt", point}};
constexpr std::array type_units = {Unit{"pt", point}, Unit{"mm", 1}, Unit{"cm", 10}, Unit{"in", inch}};
constexpr std::array yarn_units = {Unit{"m", 1000}, Unit{"km", 1e6}, Unit{"yd", yard.in_mm()}};
constexpr std::array mass_units = {Unit{"g", 1}, Unit{"mg", 0.001}, Unit{"kg", 1000}, Unit{"oz", ounce.number()},
                                   Unit{"lb", pound.number()}};
constexpr std::array volume_units = {Unit{"mL", 1}, Unit{"L", 1000}};
constexpr std::array density_units = {Unit{"g/mL", 1}};
constexpr std::array share_units = {Unit{"%", 1}};
constexpr std::array resolution_units = {Unit{"dpi", 1}};
constexpr double square_inch = inch * inch / 100; // in cm²
constexpr std::array areal_density_units = {Unit{"per cm2", 1}, Unit{"per cm²", 1}, Unit{"per in2", 1 / square_inch},
                                            Unit{"per in²", 1 / square_inch}};

// What people write for a unit, and the unit.
constexpr std::array<std::pair<std::string_view, std::string_view>, 43> spellings = {{
    {"gr", "g"},
    {"gm", "g"},
    {"gram", "g"},
    {"grams", "g"},
    {"kilo", "kg"},
    {"kilos", "kg"},
    {"ounce", "oz"},
    {"ounces", "oz"},
    {"lbs", "lb"},
    {"pound", "lb"},
    {"pounds", "lb"},
    {"inch", "in"},
    {"inches", "in"},
    {"\"", "in"},
    {"”", "in"},
    {"point", "pt"},
    {"points", "pt"},
    {"pts", "pt"},
    {"metre", "m"},
    {"metres", "m"},
    {"meter", "m"},
    {"meters", "m"},
    {"mtr", "m"},
    {"yard", "yd"},
    {"yards", "yd"},
    {"yds", "yd"},
    {"cc", "mL"},
    {"millilitre", "mL"},
    {"millilitres", "mL"},
    {"milliliter", "mL"},
    {"milliliters", "mL"},
    {"percent", "%"},
    {"per cent", "%"},
    {"/cm2", "per cm2"},
    {"/cm²", "per cm2"},
    {"cm2", "per cm2"},
    {"per square cm", "per cm2"},
    {"per sq cm", "per cm2"},
    {"per square centimetre", "per cm2"},
    {"/in2", "per in2"},
    {"per square inch", "per in2"},
    {"per sq in", "per in2"},
    {"per square in", "per in2"},
}};

constexpr std::array kitchen_measures = {"tsp",         "tbsp",  "teaspoon", "teaspoons", "tablespoon",
                                         "tablespoons", "spoon", "spoons",   "cup",       "cups",
                                         "fl oz",       "floz",  "pint",     "pinch"};

const std::array<const Dimension*, 6>& all_dimensions() {
    static const std::array<const Dimension*, 6> all = {&dimensions::paper_length, &dimensions::yarn_length,
                                                        &dimensions::mass,         &dimensions::volume,
                                                        &dimensions::density,      &dimensions::share};
    return all;
}

const Unit* find_unit(const Dimension& dimension, std::string_view name) {
    const auto unit = std::ranges::find_if(dimension.units,
                                           [&](const Unit& one) { return lower_case(one.name) == lower_case(name); });
    return unit == dimension.units.end() ? nullptr : &*unit;
}

std::vector<std::string> unit_names(const Dimension& dimension) {
    std::vector<std::string> names;
    for (const Unit& unit : dimension.units)
        names.emplace_back(unit.name);
    return names;
}

std::string example_of(const Dimension& dimension) {
    return "2.5 " + std::string{dimension.units.front().name};
}

std::string shown(std::string_view text) {
    return in_quotes(shortened(text, 40));
}

bool is_digit(char c) {
    return c >= '0' && c <= '9';
}

// What is wrong with a value, and what to write instead.
struct Complaint {
    std::string message, help;
};

// Spaces that keep a number and its unit on one line, as typographers and some keyboards put them.
std::string with_plain_spaces(std::string text) {
    for (const std::string_view space : {"\u00A0", "\u202F", "\u2009"}) {
        for (std::size_t at = text.find(space); at != std::string::npos; at = text.find(space, at))
            text.replace(at, space.size(), " ");
    }
    return text;
}

// A fraction behind an optional whole number: its value, and what follows it.
struct Fraction {
    double value = 0;
    std::string_view rest;
};

std::string_view take_digits(std::string_view& text) {
    const std::string_view digits = text.substr(0, text.find_first_not_of("0123456789"));
    text.remove_prefix(digits.size());
    return digits;
}

// "2 3/4 in", "2-3/4 in", "½ oz", "2½ in".
std::optional<Fraction> read_fraction(std::string_view text) {
    constexpr std::array<std::pair<std::string_view, double>, 10> signs = {{{"½", 1.0 / 2},
                                                                            {"¼", 1.0 / 4},
                                                                            {"¾", 3.0 / 4},
                                                                            {"⅓", 1.0 / 3},
                                                                            {"⅔", 2.0 / 3},
                                                                            {"⅛", 1.0 / 8},
                                                                            {"⅜", 3.0 / 8},
                                                                            {"⅝", 5.0 / 8},
                                                                            {"⅞", 7.0 / 8},
                                                                            {"⅕", 1.0 / 5}}};
    std::string_view rest = trimmed(text);
    const std::string_view first = take_digits(rest);
    const double number = parse_decimal(first).value_or(0);
    std::string_view behind = rest;
    while (behind.starts_with(' ') || behind.starts_with('-'))
        behind.remove_prefix(1);
    for (const auto& [sign, value] : signs) {
        if (behind.starts_with(sign)) return Fraction{number + value, trimmed(behind.substr(sign.size()))};
    }
    double whole = 0;
    std::string_view above = first;
    if (!rest.starts_with('/')) {
        whole = number;
        rest = behind;
        above = take_digits(rest);
    }
    if (above.empty() || !rest.starts_with('/')) return std::nullopt;
    rest.remove_prefix(1);
    const double below = parse_decimal(take_digits(rest)).value_or(0);
    if (below <= 0) return std::nullopt;
    return Fraction{whole + parse_decimal(above).value_or(0) / below, trimmed(rest)};
}

// "38–40", "38-40", "40±2".
bool is_range(std::string_view text) {
    constexpr std::array signs = {"–", "—", "±"};
    return text.find('-', 1) != std::string_view::npos ||
           std::ranges::any_of(signs, [&](std::string_view sign) { return text.find(sign) != std::string_view::npos; });
}

std::string how_to_write(const Dimension& dimension) {
    const auto names = unit_names(dimension);
    return names.size() == 1 ? "write it in " + names.front() : "use one of: " + joined(names, ", ");
}

// The unit that `name` spells or means; nothing where there is none of this dimension.
const Unit* meant_unit(const Dimension& dimension, std::string_view name) {
    const auto spelling =
        std::ranges::find(spellings, lower_case(name), &std::pair<std::string_view, std::string_view>::first);
    return find_unit(dimension, spelling == spellings.end() ? name : spelling->second);
}

Complaint about_number(const std::string& text, const Dimension& dimension) {
    const std::string example = example_of(dimension);
    if (const auto fraction = read_fraction(text)) {
        const Unit* unit = meant_unit(dimension, fraction->rest);
        return {shown(text) + " has a fraction in it",
                unit == nullptr ? "write it with a point, like " + example
                                : "write " + in_quotes(decimal(fraction->value, 3) + " " + std::string{unit->name})};
    }
    if (const auto bare = within_curly_quotes(text))
        return {"the quotation marks of " + shown(*bare) + " are curly", "write " + *bare + " without them"};
    if (is_range(text))
        return {shown(text) + " is more than one number", "write one number with its unit, like " + example};
    return {shown(text) + " is not a number with a unit", "write the number first, like " + example};
}

Complaint about_unit(const std::string& text, const std::string& number, const std::string& unit,
                     const Dimension& dimension) {
    const std::string noun{dimension.noun};
    const std::string lower = lower_case(unit);
    const std::string units = how_to_write(dimension);
    if (read_fraction(text) || is_range(unit)) return about_number(text, dimension);
    if (const Unit* meant = meant_unit(dimension, unit)) {
        return {shown(unit) + " is not how units are written here",
                "write " + in_quotes(number + " " + std::string{meant->name})};
    }
    if (std::ranges::find(kitchen_measures, lower) != kitchen_measures.end())
        return {shown(unit) + " is not the same amount for everybody", units};
    for (const Dimension* other : all_dimensions()) {
        const bool both_lengths = other->noun.ends_with("length") && noun.ends_with("length");
        if (both_lengths || find_unit(*other, unit) == nullptr) continue;
        return {shown(text) + " is a " + std::string{other->noun} + ", and here belongs a " + noun, units};
    }
    const auto close = nearest(unit, unit_names(dimension));
    return {shown(unit) + " is not a unit of " + noun,
            (close ? "did you mean " + in_quotes(*close) + "? " : std::string{}) + units};
}

Complaint about_bounds(const std::string& text, const std::string& what, double value, const Unit& unit,
                       Bounds bounds) {
    const bool low = value < bounds.least;
    const double bound = (low ? bounds.least : bounds.most) / unit.factor;
    const bool only_not_zero = low && value <= 0 && bound < 0.02;
    return {what + " of " + text + " is too " + (low ? "small" : "large"),
            only_not_zero ? std::string{"it must be more than zero"}
                          : std::string{low ? "the least is " : "the most is "} + significant(bound, 4) + " " +
                                std::string{unit.name}};
}

std::optional<double> complain(const Node& node, const Complaint& complaint, Diagnostics& diagnostics) {
    diagnostics.error(node.spot, complaint.message, complaint.help);
    return std::nullopt;
}

} // namespace

namespace dimensions {
const Dimension paper_length{"length", paper_units};
const Dimension type_size{"length", type_units};
const Dimension yarn_length{"yarn length", yarn_units};
const Dimension mass{"weight", mass_units};
const Dimension volume{"volume", volume_units};
const Dimension density{"density", density_units};
const Dimension share{"share", share_units};
const Dimension resolution{"resolution", resolution_units};
const Dimension areal_density{"number per area", areal_density_units};
} // namespace dimensions

std::optional<double> read_amount(const Node& node, const std::string& what, const Dimension& dimension, Bounds bounds,
                                  Diagnostics& diagnostics) {
    const auto text = with_decimal_point(node, std::string{trimmed(with_plain_spaces(node.text))}, diagnostics);
    if (!text) return std::nullopt;
    const std::size_t end = std::min(text->find_first_not_of("0123456789.+-"), text->size());
    const std::string number_text = text->substr(0, end);
    const std::string unit_name{trimmed(std::string_view{*text}.substr(end))};
    const auto number = parse_decimal(number_text);
    if (!number) return complain(node, about_number(*text, dimension), diagnostics);
    if (unit_name.empty()) {
        const std::string unit{dimension.units.front().name};
        return complain(node, {shown(*text) + " has no unit", "write " + in_quotes(*text + " " + unit)}, diagnostics);
    }
    const Unit* unit = find_unit(dimension, unit_name);
    if (unit == nullptr) return complain(node, about_unit(*text, number_text, unit_name, dimension), diagnostics);
    const double value = *number * unit->factor;
    if (value >= bounds.least && value <= bounds.most) return value;
    return complain(node, about_bounds(*text, what, value, *unit, bounds), diagnostics);
}

std::optional<std::string> within_curly_quotes(std::string_view text) {
    constexpr std::array marks = {"“", "”", "„", "‘", "’"};
    bool found = false;
    for (const std::string_view mark : marks) {
        if (text.starts_with(mark)) {
            text.remove_prefix(mark.size());
            found = true;
        }
        if (text.ends_with(mark)) text.remove_suffix(mark.size());
    }
    return found && !text.empty() ? std::optional{std::string{text}} : std::nullopt;
}

bool refuse_curly_quotes(const Node& node, std::string_view text, Diagnostics& diagnostics) {
    const auto bare = within_curly_quotes(text);
    if (!bare) return false;
    diagnostics.error(node.spot, "the quotation marks of " + shown(*bare) + " are curly",
                      "write \"" + shortened(*bare, 40) + "\", with straight ones");
    return true;
}

std::optional<std::string> with_decimal_point(const Node& node, const std::string& text, Diagnostics& diagnostics) {
    const std::size_t comma = text.find(',');
    if (comma == std::string::npos) return text;
    std::size_t after = comma + 1;
    while (after < text.size() && is_digit(text[after]))
        ++after;
    const bool one_comma = text.find(',', after) == std::string::npos && text.find('.') == std::string::npos;
    const bool in_a_number = comma > 0 && is_digit(text[comma - 1]) && after > comma + 1;
    if (!one_comma || !in_a_number) {
        diagnostics.error(node.spot, shown(text) + " has a comma in it that cannot be read",
                          "write one number, with a point before its decimals");
        return std::nullopt;
    }
    std::string point = text;
    point[comma] = '.';
    if (after == comma + 4 && !text.starts_with("0,")) {
        std::string thousands = text;
        thousands.erase(comma, 1);
        diagnostics.error(node.spot, "the comma in " + shown(text) + " can be read in two ways",
                          "write " + thousands + " or " + point);
        return std::nullopt;
    }
    if (!node.quoted) {
        diagnostics.error(node.spot, "a decimal comma in " + shown(text), "write a point: " + point);
        return std::nullopt;
    }
    diagnostics.warning(node.spot, shown(text) + " is read as " + point, "write a point: " + point);
    return point;
}

} // namespace dyeleaf
