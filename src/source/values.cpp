#include "source/values.h"

#include "base/number.h"

#include <algorithm>
#include <array>
#include <span>
#include <string_view>

namespace dyeleaf {

namespace {

std::string kind_word(Node::Kind kind) {
    switch (kind) {
    case Node::Kind::nothing: return "nothing";
    case Node::Kind::scalar: return "text";
    case Node::Kind::list: return "a list";
    case Node::Kind::map: return "a group of keys";
    }
    return {};
}

std::optional<std::string> scalar_text(const Node& node, const std::string& what, Diagnostics& diagnostics) {
    if (node.kind != Node::Kind::scalar) {
        diagnostics.error(node.spot, what + " is one word or text, and here stands " + kind_word(node.kind),
                          "write it on one line after the colon");
        return std::nullopt;
    }
    std::string text{trimmed(node.text)};
    if (text.empty()) {
        diagnostics.error(node.spot, what + " is empty", "write something, or leave the line out");
        return std::nullopt;
    }
    return text;
}

bool too_long(const Node& node, const std::string& text, const std::string& what, int most, Diagnostics& diagnostics) {
    const int length = code_points(text);
    if (length <= most) return false;
    diagnostics.error(node.spot, what + " has " + std::to_string(length) + " characters",
                      "use at most " + std::to_string(most));
    return true;
}

// A number, and what follows it.
struct Amount {
    double number = 0;
    std::string unit;
};

// "3,5 g" in quotes is taken for 3.5 g, with a word about it; unquoted it might be two values of a list.
std::string with_decimal_point(const Node& node, std::string text, Diagnostics& diagnostics) {
    const auto comma = text.find(',');
    if (comma == std::string::npos || text.find(',', comma + 1) != std::string::npos) return text;
    const auto digit = [&](std::size_t at) { return at < text.size() && text[at] >= '0' && text[at] <= '9'; };
    if (comma == 0 || !digit(comma - 1) || !digit(comma + 1) || text.find('.') != std::string::npos) return text;
    std::string point = text;
    point[comma] = '.';
    if (!node.quoted) return text;
    diagnostics.warning(node.spot, in_quotes(text) + " is read as " + point, "write a decimal point: " + point);
    return point;
}

std::optional<Amount> split_amount(const std::string& text) {
    const std::size_t end = std::min(text.find_first_not_of("0123456789.+-"), text.size());
    const auto number = parse_decimal(std::string_view{text}.substr(0, end));
    if (!number) return std::nullopt;
    return Amount{*number, std::string{trimmed(std::string_view{text}.substr(end))}};
}

struct Unit {
    std::string_view name;
    double factor; // times this is the quantity's own unit
};

// Exact by the international yard and pound agreement of 1959: in = 25.4 mm, yd = 0.9144 m, oz = 28.349523125 g,
// lb = 453.59237 g.
constexpr std::array paper_units = {Unit{"mm", 1}, Unit{"cm", 10}, Unit{"in", 25.4}, Unit{"pt", 25.4 / 72}};
constexpr std::array yarn_units = {Unit{"m", 1000}, Unit{"km", 1e6}, Unit{"yd", 914.4}};
constexpr std::array mass_units = {Unit{"g", 1}, Unit{"mg", 0.001}, Unit{"kg", 1000}, Unit{"oz", 28.349523125},
                                   Unit{"lb", 453.59237}};
constexpr std::array volume_units = {Unit{"mL", 1}, Unit{"L", 1000}};
constexpr std::array density_units = {Unit{"g/mL", 1}};
constexpr std::array percent_units = {Unit{"%", 1}};

std::string unit_names(std::span<const Unit> units) {
    std::vector<std::string> names;
    for (const Unit& unit : units)
        names.emplace_back(unit.name);
    return joined(names, ", ");
}

std::string in_unit(double value, const Unit& unit) {
    return decimal(value / unit.factor, 3) + " " + std::string{unit.name};
}

// The number in the quantity's own unit, within `range`.
std::optional<double> read_quantity(const Node& node, const std::string& what, std::span<const Unit> units,
                                    Range<double> range, Diagnostics& diagnostics) {
    auto text = scalar_text(node, what, diagnostics);
    if (!text) return std::nullopt;
    *text = with_decimal_point(node, std::move(*text), diagnostics);
    const std::string example = "2.5 " + std::string{units.front().name};
    const auto amount = split_amount(*text);
    if (!amount) {
        const bool comma = text->find(',') != std::string::npos;
        diagnostics.error(node.spot, in_quotes(shortened(*text, 40)) + " is not a number with a unit",
                          comma ? "write a decimal point, not a comma: " + example : "write it like " + example);
        return std::nullopt;
    }
    if (amount->unit.empty()) {
        diagnostics.error(node.spot, in_quotes(*text) + " has no unit",
                          "write " + in_quotes(*text + " " + std::string{units.front().name}));
        return std::nullopt;
    }
    const auto unit =
        std::ranges::find_if(units, [&](const Unit& one) { return lower_case(one.name) == lower_case(amount->unit); });
    if (unit == units.end()) {
        diagnostics.error(node.spot, in_quotes(amount->unit) + " is not a unit of " + what,
                          "use one of: " + unit_names(units));
        return std::nullopt;
    }
    const double value = amount->number * unit->factor;
    if (value >= range.least && value <= range.most) return value;
    const bool low = value < range.least;
    const double bound = low ? range.least : range.most;
    diagnostics.error(node.spot, what + " of " + *text + " is too " + (low ? "small" : "large"),
                      std::string{low ? "the least is " : "the most is "} + in_unit(bound, *unit));
    return std::nullopt;
}

template <class Number>
void complain_out_of_range(const Node& node, const std::string& what, Range<Number> range, Diagnostics& diagnostics) {
    diagnostics.error(node.spot, what + " of " + std::string{trimmed(node.text)} + " is out of range",
                      "write a number from " + decimal(static_cast<double>(range.least), 3) + " to " +
                          decimal(static_cast<double>(range.most), 3));
}

} // namespace

std::optional<std::string> read_text(const Node& node, const std::string& what, Diagnostics& diagnostics, int most) {
    auto text = scalar_text(node, what, diagnostics);
    if (!text || too_long(node, *text, what, most, diagnostics)) return std::nullopt;
    if (text->find('\n') == std::string::npos) return text;
    diagnostics.error(node.spot, what + " runs over several lines", "write it on one line");
    return std::nullopt;
}

std::optional<std::string> read_prose(const Node& node, const std::string& what, Diagnostics& diagnostics, int most) {
    auto text = scalar_text(node, what, diagnostics);
    if (!text || too_long(node, *text, what, most, diagnostics)) return std::nullopt;
    std::ranges::replace(*text, '\n', ' ');
    return text;
}

std::optional<bool> read_yes_no(const Node& node, const std::string& what, Diagnostics& diagnostics) {
    const auto text = scalar_text(node, what, diagnostics);
    if (!text) return std::nullopt;
    const std::string word = lower_case(*text);
    if (word == "yes" || word == "true") return true;
    if (word == "no" || word == "false") return false;
    diagnostics.error(node.spot, what + " is yes or no, not " + in_quotes(shortened(*text, 40)),
                      "write yes or no; leave the line out where nobody knows");
    return std::nullopt;
}

std::optional<int> read_whole(const Node& node, const std::string& what, Range<int> range, Diagnostics& diagnostics) {
    const auto text = scalar_text(node, what, diagnostics);
    if (!text) return std::nullopt;
    const auto value = parse_whole(*text);
    if (!value) {
        diagnostics.error(node.spot, what + " is a whole number, not " + in_quotes(shortened(*text, 40)),
                          "write digits alone, like 12");
        return std::nullopt;
    }
    if (*value >= range.least && *value <= range.most) return value;
    complain_out_of_range(node, what, range, diagnostics);
    return std::nullopt;
}

std::optional<double> read_decimal(const Node& node, const std::string& what, Range<double> range,
                                   Diagnostics& diagnostics) {
    auto text = scalar_text(node, what, diagnostics);
    if (!text) return std::nullopt;
    *text = with_decimal_point(node, std::move(*text), diagnostics);
    const auto value = parse_decimal(*text);
    if (!value) {
        diagnostics.error(node.spot, what + " is a number, not " + in_quotes(shortened(*text, 40)),
                          "write digits, with a point where it needs one: 2.5");
        return std::nullopt;
    }
    if (*value >= range.least && *value <= range.most) return value;
    complain_out_of_range(node, what, range, diagnostics);
    return std::nullopt;
}

std::optional<Length> read_length(const Node& node, const std::string& what, LengthRange range,
                                  Diagnostics& diagnostics) {
    const auto value = read_quantity(node, what, paper_units, {range.least.in_mm(), range.most.in_mm()}, diagnostics);
    return value ? std::optional{mm(*value)} : std::nullopt;
}

std::optional<Length> read_yarn_length(const Node& node, const std::string& what, LengthRange range,
                                       Diagnostics& diagnostics) {
    const auto value = read_quantity(node, what, yarn_units, {range.least.in_mm(), range.most.in_mm()}, diagnostics);
    return value ? std::optional{mm(*value)} : std::nullopt;
}

std::optional<Mass> read_mass(const Node& node, const std::string& what, Range<Mass> range, Diagnostics& diagnostics) {
    const auto value = read_quantity(node, what, mass_units, {range.least.number(), range.most.number()}, diagnostics);
    return value ? std::optional{grams(*value)} : std::nullopt;
}

std::optional<Volume> read_volume(const Node& node, const std::string& what, Range<Volume> range,
                                  Diagnostics& diagnostics) {
    const auto value =
        read_quantity(node, what, volume_units, {range.least.number(), range.most.number()}, diagnostics);
    return value ? std::optional{millilitres(*value)} : std::nullopt;
}

std::optional<Density> read_density(const Node& node, const std::string& what, Range<Density> range,
                                    Diagnostics& diagnostics) {
    const auto value =
        read_quantity(node, what, density_units, {range.least.number(), range.most.number()}, diagnostics);
    return value ? std::optional{grams_per_millilitre(*value)} : std::nullopt;
}

std::optional<Percent> read_percent(const Node& node, const std::string& what, Range<Percent> range,
                                    Diagnostics& diagnostics) {
    const auto value =
        read_quantity(node, what, percent_units, {range.least.number(), range.most.number()}, diagnostics);
    return value ? std::optional{percent(*value)} : std::nullopt;
}

std::optional<Rgb> read_ink(const Node& node, Diagnostics& diagnostics) {
    const auto text = scalar_text(node, "colour", diagnostics);
    if (!text) return std::nullopt;
    const auto colour = parse_hex(*text);
    if (!colour) {
        diagnostics.error(node.spot, in_quotes(shortened(*text, 40)) + " is not a colour",
                          R"(write # and six hexadecimal digits, in quotes: "#8d7fa8")");
    }
    return colour;
}

const std::vector<Node>& read_list(const Node& node, const std::string& what, const std::string& example,
                                   Diagnostics& diagnostics) {
    static const std::vector<Node> none;
    if (node.kind == Node::Kind::list) return node.items;
    diagnostics.error(node.spot, what + " is a list, and here stands " + kind_word(node.kind),
                      "write it like " + example);
    return none;
}

} // namespace dyeleaf
