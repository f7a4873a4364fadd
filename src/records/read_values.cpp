#include "records/read_values.h"

#include "base/number.h"
#include "records/colour_notation.h"
#include "records/complaint.h"
#include "records/guess_dates.h"
#include "records/plain_letters.h"
#include "records/read_fields.h"
#include "records/read_photo_colour.h"
#include "records/read_spectrum.h"
#include "source/amounts.h"
#include "source/values.h"

#include <algorithm>
#include <cmath>
#include <fmt/format.h>
#include <utility>

namespace dyeleaf {

namespace {

bool is_digit(char c) {
    return c >= '0' && c <= '9';
}

bool is_letter(char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
}

std::vector<std::string> split(std::string_view text, std::string_view marks) {
    std::vector<std::string> parts;
    while (true) {
        const std::size_t end = std::min(text.find_first_of(marks), text.size());
        parts.emplace_back(trimmed(text.substr(0, end)));
        if (end == text.size()) return parts;
        text.remove_prefix(end + 1);
    }
}

// The numbers of a text that has nothing else between the marks: "2.11.2026" gives 2, 11, 2026.
std::vector<int> numbers_between(std::string_view text, std::string_view marks) {
    std::vector<int> numbers;
    for (const std::string& part : split(text, marks)) {
        const auto number = std::ranges::all_of(part, is_digit) ? parse_whole(part) : std::nullopt;
        if (!number) return {};
        numbers.push_back(*number);
    }
    return numbers;
}

// "creme-brulee" for "Crème brûlée": what the dyer may have meant.
std::string as_id(std::string_view text) {
    std::string id;
    for (const char c : plain_letters(text)) {
        if (is_letter(c) || is_digit(c) || c == '.' || c == '-' || c == '_') {
            id += c;
        } else if (!id.empty() && !id.ends_with('-')) {
            id += '-';
        }
    }
    while (id.ends_with('-'))
        id.pop_back();
    return id;
}

Complaint about_date(const std::string& text) {
    const std::string forms = "write the year first, as in 2026-11-02; 2026-11, 2026 and unknown will do as well";
    const auto parts = numbers_between(text, "-");
    const bool year_first = !parts.empty() && parts[0] >= 1000 && parts[0] <= 9999;
    if (year_first && (parts.size() == 2 || parts.size() == 3)) {
        std::string padded = fmt::format("{:04}-{:02}", parts[0], parts[1]);
        if (parts.size() == 3) padded += fmt::format("-{:02}", parts[2]);
        if (padded != text && parse_iso_date(padded))
            return {shown(text) + " is not written in full", "write " + padded};
        return {std::string{"there is no such "} + (parts.size() == 3 ? "day" : "month") + " as " + shown(text),
                "look at the month and the day again"};
    }
    const auto guesses = guess_dates(text);
    if (guesses.size() == 1) return {shown(text) + " is not how dates are written here", "write " + guesses.front()};
    const std::string several = shown(text) + " can be read as more than one date";
    if (!guesses.empty()) return {several, "write " + joined(guesses, " or ") + ", the year first"};
    if (numbers_between(text, "/.-").size() == 3) return {several, forms};
    return {shown(text) + " is not a date", forms};
}

} // namespace

std::optional<Id> read_id(const Node& node, const std::string& what, Diagnostics& diagnostics) {
    constexpr std::size_t longest = 40;
    const auto text = read_word(node, what, diagnostics);
    if (!text) return std::nullopt;
    const bool sound = std::ranges::all_of(
        *text, [](char c) { return is_letter(c) || is_digit(c) || c == '.' || c == '-' || c == '_'; });
    if (sound && text->size() <= longest) return Id{*text, node.spot};
    if (sound) {
        diagnostics.error(node.spot, shown(*text) + " is too long for an id",
                          "use at most 40 characters; the name can be long");
        return std::nullopt;
    }
    const std::string dashed = as_id(*text);
    const bool usable = !dashed.empty() && dashed.size() <= longest;
    diagnostics.error(node.spot, shown(*text) + " has characters that an id cannot have",
                      "use the letters a to z, digits, dots, dashes and underscores" +
                          (usable ? ", as in " + in_quotes(dashed) : std::string{}) + "; the name can be anything");
    return std::nullopt;
}

std::optional<Id> read_reference(const Node& node, const std::string& what, Diagnostics& diagnostics) {
    auto text = read_word(node, what, diagnostics);
    return text ? std::optional{Id{std::move(*text), node.spot}} : std::nullopt;
}

std::optional<std::string> read_name(const Node& node, const std::string& what, Diagnostics& diagnostics) {
    auto text = read_text(node, what, diagnostics);
    const auto bare = text && !node.quoted ? within_curly_quotes(*text) : std::nullopt;
    constexpr std::string_view mark = "“";
    const bool both_ends = bare && bare->size() + 2 * mark.size() == text->size();
    if (both_ends && bare->find("”") == std::string::npos) {
        diagnostics.warning(node.spot, "the curly quotation marks around " + shown(*bare) + " would be printed",
                            "write it without them; to have them printed, put straight ones around the whole");
    }
    return text;
}

std::optional<RecordedDate> read_date(const Node& node, const std::string& what, Diagnostics& diagnostics) {
    const auto text = read_word(node, what, diagnostics);
    if (!text) return std::nullopt;
    if (lower_case(*text) == "unknown") return RecordedDate{UnknownDate{}};
    const auto date = parse_iso_date(*text);
    if (date && date->year >= 1900 && date->year <= 2199) return RecordedDate{*date};
    const Complaint complaint =
        date ? Complaint{"the year " + std::to_string(date->year) + " cannot be right",
                         "years from 1900 to 2199 are read; write unknown where the date is lost"}
             : about_date(*text);
    diagnostics.error(node.spot, complaint.message, complaint.help);
    return std::nullopt;
}

std::optional<Months> read_period(const Node& node, const std::string& what, Diagnostics& diagnostics) {
    const auto text = read_word(node, what, diagnostics);
    if (!text) return std::nullopt;
    const std::size_t end = std::min(text->find_first_not_of("0123456789"), text->size());
    const auto number = parse_whole(std::string_view{*text}.substr(0, end));
    const std::string unit = lower_case(trimmed(std::string_view{*text}.substr(end)));
    const bool months = unit == "month" || unit == "months";
    if (number && (months || unit == "year" || unit == "years")) {
        constexpr int longest = 240;
        const bool in_range = *number >= 1 && *number <= longest;
        const Months period{in_range ? *number * (months ? 1 : 12) : 0};
        if (in_range && period.count <= longest) return period;
        diagnostics.error(node.spot, what + " of " + shown(*text) + " is out of range",
                          "write a time from 1 month to 20 years");
        return std::nullopt;
    }
    diagnostics.error(node.spot, shown(*text) + " is not a time in months or years",
                      parse_iso_date(*text) && number && *number > 1900
                          ? "write it as in 6 months or 2 years; a date goes into the jar's “use by”"
                          : "write it as in 6 months or 2 years");
    return std::nullopt;
}

std::optional<Sourced<RecordedColour>> read_colour(const Node& node, const std::string& what,
                                                   Diagnostics& diagnostics) {
    if (node.kind == Node::Kind::map) {
        if (speaks_of_photo(node)) return read_photo_colour(node, diagnostics);
        const auto spectrum = read_spectrum(node, what, diagnostics);
        return spectrum ? std::optional{Sourced<RecordedColour>{*spectrum, node.spot}} : std::nullopt;
    }
    const auto text = read_text(node, what, diagnostics);
    if (!text) return std::nullopt;
    const auto colour = parse_colour(*text);
    if (const auto* read = std::get_if<RecordedColour>(&colour)) return Sourced<RecordedColour>{*read, node.spot};
    const auto& complaint = std::get<Complaint>(colour);
    diagnostics.error(node.spot, complaint.message, complaint.help);
    return std::nullopt;
}

namespace {

// Where nobody says: only an instrument measures a curve.
ColourSource usual_source(const std::optional<Sourced<RecordedColour>>& colour) {
    if (!colour) return ColourSource::eye;
    if (photo_of(colour->value) != nullptr) return ColourSource::photo;
    return std::holds_alternative<Spectrum>(colour->value) ? ColourSource::instrument : ColourSource::eye;
}

} // namespace

ColourSource read_colour_source(Fields& fields, const std::optional<Sourced<RecordedColour>>& colour) {
    const auto words = one_of<ColourSource>(
        {{"instrument", ColourSource::instrument}, {"photo", ColourSource::photo}, {"eye", ColourSource::eye}});
    const ColourSource usual = usual_source(colour);
    const ColourSource source = optional_field(fields, "colour from", words).value_or(usual);
    if (usual != ColourSource::photo || source == usual) return source;
    fields.diagnostics().error(colour->spot, "this colour is read from a photo, and “colour from” says otherwise",
                               "delete “colour from”, or write the colour as it was measured");
    return usual;
}

std::optional<Backs> read_backs(const Node& node, const std::string& what, Diagnostics& diagnostics) {
    return read_choice<Backs>(node, what,
                              {{"long edge", Backs::long_edge},
                               {"short edge", Backs::short_edge},
                               {"by hand", Backs::by_hand},
                               {"by hand reversed", Backs::by_hand_reversed}},
                              diagnostics);
}

std::optional<RecordedPicture> read_picture_name(const Node& node, const std::string& what, Diagnostics& diagnostics) {
    const auto name = read_text(node, what, diagnostics);
    if (!name) return std::nullopt;
    return RecordedPicture{{*name, node.spot}, std::nullopt};
}

std::optional<Density> read_bulk_density(const Node& node, const std::string& what, Diagnostics& diagnostics) {
    return read_density(node, what, {grams_per_millilitre(0.05), grams_per_millilitre(5)}, diagnostics);
}

} // namespace dyeleaf
