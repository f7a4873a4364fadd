#include "records/read_skein.h"

#include "base/number.h"
#include "records/read_fields.h"
#include "records/read_price.h"

#include <algorithm>
#include <cmath>

namespace dyeleaf {

namespace {

bool is_unit_letter(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
}

// The two figures of "400 m / 437 yd" and "400 m (437 yd)"; one where there is no second. What parts them stands
// behind a unit: the stroke of a fraction does not.
std::vector<Node> figures_of(const Node& node) {
    const std::string_view text = trimmed(node.text);
    const std::size_t mark = text.find_first_of("/(=");
    if (node.kind != Node::Kind::scalar || mark == std::string_view::npos) return {node};
    const std::string_view first = trimmed(text.substr(0, mark));
    std::string_view second = trimmed(text.substr(mark + 1));
    if (text[mark] == '(' && second.ends_with(')')) second.remove_suffix(1);
    if (first.empty() || second.empty() || !is_unit_letter(first.back())) return {node};
    std::vector<Node> figures{node, node};
    figures[0].text = first;
    figures[1].text = second;
    return figures;
}

template <class T> using Read = std::optional<T> (*)(const Node&, const std::string&, Range<T>, Diagnostics&);

template <class T>
std::optional<SkeinFigure<T>> read_figure(const Node& node, const std::string& what, Read<T> read, Range<T> range,
                                          Diagnostics& diagnostics) {
    SkeinFigure<T> figure;
    const std::vector<Node> written = figures_of(node);
    for (const Node& one : written) {
        const auto value = read(one, what, range, diagnostics);
        if (!value) return std::nullopt;
        auto& as_written = is_imperial(one) ? figure.imperial : figure.metric;
        if (as_written) {
            diagnostics.error(node.spot, in_quotes(shortened(node.text, 40)) + " gives the " + what + " twice",
                              "write it once; what it is in other units is worked out");
            return std::nullopt;
        }
        as_written = value;
        if (&one == &written.front()) figure.value = *value;
    }
    if (!figure.metric || !figure.imperial) return figure;
    constexpr double tolerance = 0.01; // what rounding explains
    if (std::abs(*figure.imperial / *figure.metric - 1) > tolerance) {
        diagnostics.warning(node.spot,
                            std::string{trimmed(written[0].text)} + " and " + std::string{trimmed(written[1].text)} +
                                " are not the same " + what,
                            "look at both again, or write one alone: the other is worked out");
    }
    return figure;
}

// The finest lace runs to a few thousand metres in 100 g (common practice); more is a digit too many.
void doubt_fineness(const SkeinSize& skein, const Node& mass, const Node& length, Diagnostics& diagnostics) {
    constexpr double finest = 100; // metres in a gram
    if (skein.mass.value <= Mass{} || skein.length.value.in_m() <= finest * skein.mass.value.number()) return;
    diagnostics.warning(length.spot,
                        std::string{trimmed(length.text)} + " is very long for a skein of " +
                            std::string{trimmed(mass.text)},
                        "no yarn is so fine: look for a digit too many, or one too few in the weight");
}

std::optional<OddSkein> read_odd_skein(const Node& node, const Currency& currency, Diagnostics& diagnostics) {
    OddSkein skein;
    std::optional<SkeinFigure<Mass>> mass;
    if (node.kind == Node::Kind::map) {
        Fields fields{node, "odd skein", diagnostics};
        mass = needed_field(fields, "weight", "weight: 63 g", read_skein_mass);
        if (const Node* price = fields.take("price")) skein.price = read_price(*price, currency, diagnostics);
        fields.refuse_the_rest();
    } else {
        mass = read_skein_mass(node, "weight", diagnostics);
    }
    if (!mass) return std::nullopt;
    skein.mass = *mass;
    return skein;
}

// The number that stands before the colon, if the lot has such a skein for sale.
std::optional<int> read_number(const Entry& entry, const Lot& lot, Diagnostics& diagnostics) {
    const auto number = parse_whole(entry.key);
    const std::string shown = in_quotes(shortened(entry.key, 40));
    if (!number) {
        diagnostics.error(entry.key_spot, shown + " is not the number of a skein",
                          "write its number, then its weight, as in odd skeins: {7: 63 g}");
    } else if (*number < 1 || (lot.skeins > 0 && *number > lot.skeins)) {
        diagnostics.error(entry.key_spot,
                          "there is no skein " + std::to_string(*number) + " in a lot of " + std::to_string(lot.skeins),
                          "give the numbers of the odd skeins, from 1 to " + std::to_string(lot.skeins));
    } else if (std::ranges::find(lot.spoilt, *number) != lot.spoilt.end()) {
        diagnostics.error(entry.key_spot, "skein " + std::to_string(*number) + " is spoilt, and here it has a weight",
                          "take it out of one of the two: a spoilt skein gets no tag");
    } else {
        return number;
    }
    return std::nullopt;
}

} // namespace

std::optional<SkeinFigure<Mass>> read_skein_mass(const Node& node, const std::string& what, Diagnostics& diagnostics) {
    return read_figure<Mass>(node, what, read_mass, {grams(1), grams(100'000)}, diagnostics);
}

std::optional<SkeinFigure<Length>> read_skein_length(const Node& node, const std::string& what,
                                                     Diagnostics& diagnostics) {
    return read_figure<Length>(node, what, read_yarn_length, {metres(1), metres(100'000)}, diagnostics);
}

SkeinSize read_skein(const Node& node, Diagnostics& diagnostics) {
    SkeinSize skein;
    if (node.kind != Node::Kind::map) {
        diagnostics.error(node.spot, "the skein has a weight and a length, each with its name",
                          "write skein: {weight: 100 g, length: 420 m}");
        return skein;
    }
    Fields fields{node, "skein", diagnostics};
    skein.mass = needed_field(fields, "weight", "weight: 100 g", read_skein_mass).value_or(SkeinFigure<Mass>{});
    skein.length = needed_field(fields, "length", "length: 420 m", read_skein_length).value_or(SkeinFigure<Length>{});
    const Node* mass = fields.take("weight");
    const Node* length = fields.take("length");
    if (mass != nullptr && length != nullptr) doubt_fineness(skein, *mass, *length, diagnostics);
    fields.refuse_the_rest();
    return skein;
}

std::vector<OddSkein> read_odd_skeins(const Node& node, const Lot& lot, const Currency& currency,
                                      Diagnostics& diagnostics) {
    std::vector<OddSkein> skeins;
    if (node.kind != Node::Kind::map) {
        diagnostics.error(node.spot, "the odd skeins stand by their numbers, each with its weight",
                          "write odd skeins: {7: 63 g}");
        return skeins;
    }
    for (const Entry& entry : node.entries()) {
        const auto number = read_number(entry, lot, diagnostics);
        if (number && std::ranges::find(skeins, *number, &OddSkein::number) != skeins.end()) {
            diagnostics.error(entry.key_spot, "skein " + std::to_string(*number) + " stands here twice",
                              "keep the weight that is right");
            continue;
        }
        if (entry.value.kind == Node::Kind::nothing) {
            diagnostics.error(entry.key_spot, "nothing stands after " + in_quotes(shortened(entry.key, 40)),
                              "write the skein's weight, as in 7: 63 g");
            continue;
        }
        auto skein = read_odd_skein(entry.value, currency, diagnostics);
        if (!number || !skein) continue;
        skein->number = *number;
        skeins.push_back(*skein);
    }
    return skeins;
}

} // namespace dyeleaf
