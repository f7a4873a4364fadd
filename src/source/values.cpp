#include "source/values.h"

#include "base/number.h"
#include "source/amounts.h"

#include <algorithm>
#include <array>

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
        diagnostics.error(
            node.spot, what + " is one word or text, and here stands " + kind_word(node.kind),
            "write it on one line after the colon; a text that holds a colon, a bracket or a # needs quotes");
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

// The number of a quantity in its own unit.
std::optional<double> read_quantity(const Node& node, const std::string& what, const Dimension& dimension,
                                    Bounds bounds, Diagnostics& diagnostics) {
    if (!scalar_text(node, what, diagnostics)) return std::nullopt;
    return read_amount(node, what, dimension, bounds, diagnostics);
}

std::optional<Length> read_length_as(const Node& node, const std::string& what, const Dimension& dimension,
                                     LengthRange range, Diagnostics& diagnostics) {
    const auto value = read_quantity(node, what, dimension, {range.least.in_mm(), range.most.in_mm()}, diagnostics);
    return value ? std::optional{mm(*value)} : std::nullopt;
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

std::optional<std::string> read_word(const Node& node, const std::string& what, Diagnostics& diagnostics) {
    auto text = read_text(node, what, diagnostics);
    return text && refuse_curly_quotes(node, *text, diagnostics) ? std::nullopt : text;
}

std::optional<std::string> read_prose(const Node& node, const std::string& what, Diagnostics& diagnostics, int most) {
    auto text = scalar_text(node, what, diagnostics);
    if (!text || too_long(node, *text, what, most, diagnostics)) return std::nullopt;
    std::ranges::replace(*text, '\n', ' ');
    return text;
}

std::optional<bool> read_yes_no(const Node& node, const std::string& what, Diagnostics& diagnostics) {
    const auto text = read_word(node, what, diagnostics);
    if (!text) return std::nullopt;
    const std::string word = lower_case(*text);
    if (word == "yes" || word == "true") return true;
    if (word == "no" || word == "false") return false;
    diagnostics.error(node.spot, what + " is yes or no, not " + in_quotes(shortened(*text, 40)),
                      "write yes or no; leave the line out where nobody knows");
    return std::nullopt;
}

std::optional<int> read_whole(const Node& node, const std::string& what, Range<int> range, Diagnostics& diagnostics) {
    const auto text = read_word(node, what, diagnostics);
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
    const auto written = read_word(node, what, diagnostics);
    const auto text = written ? with_decimal_point(node, *written, diagnostics) : std::nullopt;
    if (!text) return std::nullopt;
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
    return read_length_as(node, what, dimensions::paper_length, range, diagnostics);
}

std::optional<Length> read_type_size(const Node& node, const std::string& what, LengthRange range,
                                     Diagnostics& diagnostics) {
    return read_length_as(node, what, dimensions::type_size, range, diagnostics);
}

std::optional<Length> read_yarn_length(const Node& node, const std::string& what, LengthRange range,
                                       Diagnostics& diagnostics) {
    return read_length_as(node, what, dimensions::yarn_length, range, diagnostics);
}

std::optional<Mass> read_mass(const Node& node, const std::string& what, Range<Mass> range, Diagnostics& diagnostics) {
    const auto value =
        read_quantity(node, what, dimensions::mass, {range.least.number(), range.most.number()}, diagnostics);
    return value ? std::optional{grams(*value)} : std::nullopt;
}

std::optional<Volume> read_volume(const Node& node, const std::string& what, Range<Volume> range,
                                  Diagnostics& diagnostics) {
    const auto value =
        read_quantity(node, what, dimensions::volume, {range.least.number(), range.most.number()}, diagnostics);
    return value ? std::optional{millilitres(*value)} : std::nullopt;
}

std::optional<Density> read_density(const Node& node, const std::string& what, Range<Density> range,
                                    Diagnostics& diagnostics) {
    const auto value =
        read_quantity(node, what, dimensions::density, {range.least.number(), range.most.number()}, diagnostics);
    return value ? std::optional{grams_per_millilitre(*value)} : std::nullopt;
}

std::optional<Percent> read_percent(const Node& node, const std::string& what, Range<Percent> range,
                                    Diagnostics& diagnostics) {
    const auto value =
        read_quantity(node, what, dimensions::share, {range.least.number(), range.most.number()}, diagnostics);
    return value ? std::optional{percent(*value)} : std::nullopt;
}

std::optional<ArealDensity> read_areal_density(const Node& node, const std::string& what, Range<ArealDensity> range,
                                               Diagnostics& diagnostics) {
    const auto value =
        read_quantity(node, what, dimensions::areal_density, {range.least.number(), range.most.number()}, diagnostics);
    return value ? std::optional{per_square_centimetre(*value)} : std::nullopt;
}

std::optional<double> read_resolution(const Node& node, const std::string& what, Range<double> range,
                                      Diagnostics& diagnostics) {
    return read_quantity(node, what, dimensions::resolution, {range.least, range.most}, diagnostics);
}

bool is_imperial(const Node& node) {
    constexpr std::array units = {"in", "yd", "oz", "lb"};
    const std::string text = lower_case(trimmed(node.text));
    return node.kind == Node::Kind::scalar &&
           std::ranges::any_of(units, [&](std::string_view unit) { return text.ends_with(unit); });
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
    if (node.kind == Node::Kind::list) return node.items();
    diagnostics.error(node.spot, what + " is a list, and here stands " + kind_word(node.kind),
                      "write it like " + example);
    return none;
}

} // namespace dyeleaf
