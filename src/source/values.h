// Single values out of nodes. Each reader reports what is wrong, with what to write instead, and returns nothing then;
// `what` names the field in the complaint: "depth", "diameter".
#pragma once

#include "base/colour.h"
#include "base/length.h"
#include "base/nearest.h"
#include "base/quantity.h"
#include "base/words.h"
#include "source/document.h"

#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace dyeleaf {

template <class T> struct Range {
    T least, most; // both allowed
};
using LengthRange = Range<Length>;

// Text as written, trimmed, not empty, at most `most` characters and on one line.
std::optional<std::string> read_text(const Node& node, const std::string& what, Diagnostics& diagnostics,
                                     int most = 300);
// As read_text; curly quotation marks around it are an error.
std::optional<std::string> read_word(const Node& node, const std::string& what, Diagnostics& diagnostics);
// As read_text, but may run over several lines; these are joined by spaces.
std::optional<std::string> read_prose(const Node& node, const std::string& what, Diagnostics& diagnostics,
                                      int most = 2000);
// `yes`, `no`, `true`, `false`.
std::optional<bool> read_yes_no(const Node& node, const std::string& what, Diagnostics& diagnostics);
std::optional<int> read_whole(const Node& node, const std::string& what, Range<int> range, Diagnostics& diagnostics);
std::optional<double> read_decimal(const Node& node, const std::string& what, Range<double> range,
                                   Diagnostics& diagnostics);

// Quantities are written with their unit, before or after a space: "12.5 mm", "2in".
// mm, cm, in, pt.
std::optional<Length> read_length(const Node& node, const std::string& what, LengthRange range,
                                  Diagnostics& diagnostics);
// As read_length; a complaint shows points, in which type is measured.
std::optional<Length> read_type_size(const Node& node, const std::string& what, LengthRange range,
                                     Diagnostics& diagnostics);
// m, km, yd.
std::optional<Length> read_yarn_length(const Node& node, const std::string& what, LengthRange range,
                                       Diagnostics& diagnostics);
// g, mg, kg, oz, lb.
std::optional<Mass> read_mass(const Node& node, const std::string& what, Range<Mass> range, Diagnostics& diagnostics);
// mL, L.
std::optional<Volume> read_volume(const Node& node, const std::string& what, Range<Volume> range,
                                  Diagnostics& diagnostics);
// g/mL.
std::optional<Density> read_density(const Node& node, const std::string& what, Range<Density> range,
                                    Diagnostics& diagnostics);
// %.
std::optional<Percent> read_percent(const Node& node, const std::string& what, Range<Percent> range,
                                    Diagnostics& diagnostics);

// per cm2, per in2.
std::optional<ArealDensity> read_areal_density(const Node& node, const std::string& what, Range<ArealDensity> range,
                                               Diagnostics& diagnostics);

// dpi, dots to the inch.
std::optional<double> read_resolution(const Node& node, const std::string& what, Range<double> range,
                                      Diagnostics& diagnostics);

// Whether an amount of one of these kinds was written in in, yd, oz or lb.
bool is_imperial(const Node& node);

// An sRGB colour in hex, for layouts: "#8d7fa8".
std::optional<Rgb> read_ink(const Node& node, Diagnostics& diagnostics);

// The items of a list; anything else is an error and an empty list.
const std::vector<Node>& read_list(const Node& node, const std::string& what, const std::string& example,
                                   Diagnostics& diagnostics);

// One word of a fixed set, case ignored.
template <class T>
std::optional<T> read_choice(const Node& node, const std::string& what,
                             const std::vector<std::pair<std::string, T>>& choices, Diagnostics& diagnostics) {
    const auto text = read_word(node, what, diagnostics);
    if (!text) return std::nullopt;
    std::vector<std::string> words;
    for (const auto& [word, value] : choices) {
        if (lower_case(word) == lower_case(*text)) return value;
        words.push_back(word);
    }
    const auto close = nearest(*text, words);
    diagnostics.error(node.spot, in_quotes(shortened(*text, 40)) + " is not one of the words for " + in_quotes(what),
                      (close ? "did you mean " + in_quotes(*close) + "? " : std::string{}) +
                          "the words are: " + joined(words, ", "));
    return std::nullopt;
}

} // namespace dyeleaf
