#include "records/read_photo_colour.h"

#include "base/number.h"
#include "base/words.h"
#include "colour/xyz.h"
#include "records/read_fields.h"
#include "records/read_values.h"
#include "source/values.h"

#include <algorithm>
#include <array>
#include <fmt/format.h>

namespace dyeleaf {

namespace {

const std::string area_example = "{across: 10 to 45 %, down: 20 to 80 %}";

// "10 to 45 %" in its parts; the units may be missing, as written.
struct WrittenStretch {
    double from = 0, to = 0;
    std::string first_unit, unit;
};

std::optional<double> take_number(std::string_view& text) {
    const std::size_t end = std::min(text.find_first_not_of("0123456789."), text.size());
    const auto number = parse_decimal(text.substr(0, end));
    text.remove_prefix(end);
    text = trimmed(text);
    return number;
}

std::string take_unit(std::string_view& text) {
    constexpr std::array<std::pair<std::string_view, std::string_view>, 5> units = {
        {{"%", "%"}, {"per cent", "%"}, {"pixels", "px"}, {"pixel", "px"}, {"px", "px"}}};
    for (const auto& [spelling, unit] : units) {
        if (!text.starts_with(spelling)) continue;
        text = trimmed(text.substr(spelling.size()));
        return std::string{unit};
    }
    return {};
}

bool take_to(std::string_view& text) {
    for (const std::string_view word : {"to", "–", "-", "…", ".."}) {
        if (!text.starts_with(word)) continue;
        text = trimmed(text.substr(word.size()));
        return true;
    }
    return false;
}

std::optional<WrittenStretch> parse_stretch(const std::string& written) {
    const std::string lower = lower_case(written);
    std::string_view text = lower;
    const auto from = take_number(text);
    const std::string first_unit = take_unit(text);
    if (!from || !take_to(text)) return std::nullopt;
    const auto to = take_number(text);
    const std::string unit = take_unit(text);
    if (!to || !text.empty()) return std::nullopt;
    return WrittenStretch{*from, *to, first_unit, unit};
}

bool is_whole(double number) {
    constexpr double most_pixels_written = 1'000'000;
    return number <= most_pixels_written && number == static_cast<int>(number);
}

std::string as_written(double from, double to, const std::string& unit) {
    return in_quotes(decimal(from, 3) + " to " + decimal(to, 3) + " " + unit);
}

std::optional<Stretch> read_stretch(const Node& node, const std::string& what, Diagnostics& diagnostics) {
    const auto text = read_word(node, what, diagnostics);
    if (!text) return std::nullopt;
    const std::string shown = in_quotes(shortened(*text, 40));
    const auto refuse = [&](const std::string& message, const std::string& help) {
        diagnostics.error(node.spot, message, help);
        return std::nullopt;
    };
    const auto parts = parse_stretch(*text);
    if (!parts) {
        return refuse(shown + " does not say from where to where",
                      "write where it begins and where it ends, as in 10 to 45 %, or in pixels, 400 to 1800 px");
    }
    const auto& [from, to, first_unit, unit] = *parts;
    if (!first_unit.empty() && !unit.empty() && first_unit != unit) {
        return refuse(shown + " is in two units", "write both numbers in per cent of the picture, as in 10 to 45 %, or "
                                                  "both in pixels, 400 to 1800 px");
    }
    if (unit.empty()) {
        return refuse(shown + " has no unit", "write it as " + as_written(from, to, "%") + " of the picture, or as " +
                                                  as_written(from, to, "px"));
    }
    if (from >= to)
        return refuse(shown + " ends before it begins", "the smaller number comes first: it is nearer to the edge");
    if (unit == "%") {
        if (to > 100) return refuse(shown + " ends beyond the picture", "its far edge is at 100 %");
        return Between<Percent>{percent(from), percent(to)};
    }
    if (!is_whole(from) || !is_whole(to))
        return refuse(shown + " is no number of pixels", "pixels are whole numbers, as in 400 to 1800 px");
    return Between<int>{static_cast<int>(from), static_cast<int>(to)};
}

std::optional<PhotoArea> read_area(Fields& fields) {
    const auto across = needed_field(fields, "across", "across: 10 to 45 %", read_stretch);
    const auto down = needed_field(fields, "down", "down: 20 to 80 %", read_stretch);
    return across && down ? std::optional{PhotoArea{*across, *down}} : std::nullopt;
}

std::optional<PhotoArea> read_swatch_area(const Node& node, const std::string& what, Diagnostics& diagnostics) {
    Fields fields{node, what, diagnostics};
    auto area = read_area(fields);
    fields.refuse_the_rest();
    return area;
}

struct Reference {
    PhotoArea area;
    Percent reflectance;
};

// CIE 15:2004, 8.2.1.
double lightness_of(Percent reflectance) {
    return to_lab(Xyz{0, reflectance.number() / 100, 0}).lightness;
}

Percent reflectance_of(double lightness) {
    return percent(100 * to_xyz(Lab{lightness, 0, 0}).y);
}

// Grey cards are sold by reflectance or by lightness; what is taken for white paper is lighter than any of them.
constexpr double least_grey = 20, most_grey = 85, least_white = 80, most_white = 100;

std::optional<Percent> read_reflectance(Fields& fields, bool is_white) {
    const auto lightness =
        optional_field(fields, "lightness", [](const Node& node, const std::string& what, Diagnostics& diagnostics) {
            return read_decimal(node, what, {1, 100}, diagnostics);
        });
    const auto reflectance = optional_field(fields, "reflectance", within(read_percent, {percent(1), percent(100)}));
    const std::string help = is_white ? "white office paper has a lightness of about 95: write lightness: 95"
                                      : "write what is printed on the card: reflectance: 18 %, or lightness: 50";
    const bool has_both = fields.has("lightness") && fields.has("reflectance");
    const bool has_none = !fields.has("lightness") && !fields.has("reflectance");
    const std::string name = is_white ? "white" : "grey";
    if (has_both || has_none) {
        fields.diagnostics().error(fields.node().spot,
                                   has_both ? "this " + name + " has a lightness and a reflectance as well"
                                            : "how light this " + name + " is does not stand here",
                                   has_both ? "keep one of the two: either follows from the other" : help);
        return std::nullopt;
    }
    if (!lightness && !reflectance) return std::nullopt;
    const Percent share = reflectance ? *reflectance : reflectance_of(*lightness);
    const double light = lightness_of(share);
    const bool fits =
        is_white ? light >= least_white && light <= most_white + 1e-9 : light >= least_grey && light <= most_grey;
    if (fits) return share;
    fields.diagnostics().error(fields.node().spot, "a lightness of " + decimal(light, 0) + " is not " + name, help);
    return std::nullopt;
}

std::optional<Reference> read_reference_area(const Node& node, bool is_white, Diagnostics& diagnostics) {
    Fields fields{node, is_white ? "white" : "grey", diagnostics};
    const auto area = read_area(fields);
    const auto reflectance = read_reflectance(fields, is_white);
    fields.refuse_the_rest();
    return area && reflectance ? std::optional{Reference{*area, *reflectance}} : std::nullopt;
}

} // namespace

bool speaks_of_photo(const Node& node) {
    constexpr std::array<std::string_view, 4> keys = {"photo", "swatch", "grey", "white"};
    return std::ranges::any_of(node.entries(),
                               [&](const Entry& entry) { return std::ranges::find(keys, entry.key) != keys.end(); });
}

std::optional<Sourced<RecordedColour>> read_photo_colour(const Node& node, Diagnostics& diagnostics) {
    Fields fields{node, "colour from a photo", diagnostics};
    PhotoColour colour;
    const auto photo = needed_field(fields, "photo", "photo: sloe.jpg", read_picture_name);
    const Node* swatch = fields.need("swatch", "swatch: " + area_example);
    const Node* grey = fields.take("grey");
    const Node* white = fields.take("white");
    const auto swatch_area = swatch == nullptr ? std::nullopt : read_swatch_area(*swatch, "swatch", diagnostics);
    const Node* beside = grey == nullptr ? white : grey;
    const auto reference =
        beside == nullptr ? std::nullopt : read_reference_area(*beside, beside == white, diagnostics);
    if (fields.has("grey") == fields.has("white")) {
        diagnostics.error(node.spot,
                          beside == nullptr ? "this photo has no grey or white to tell its light by"
                                            : "this photo has a grey and a white as well",
                          beside == nullptr ? "write where the card lies, as in grey: {across: 60 to 80 %, down: 20 to "
                                              "80 %, reflectance: 18 %}, or white: for paper"
                                            : "keep the one nearer to the swatch");
    }
    fields.refuse_the_rest();
    if (!photo || !swatch_area || !reference) return std::nullopt;
    colour.photo = *photo;
    colour.question = {*swatch_area, reference->area, reference->reflectance};
    colour.by_white = beside == white;
    colour.swatch_spot = swatch->spot;
    colour.reference_spot = beside->spot;
    return Sourced<RecordedColour>{Boxed{std::move(colour)}, node.spot};
}

} // namespace dyeleaf
