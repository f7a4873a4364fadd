#include "records/read_hazards.h"

#include "records/hazard_classes.h"
#include "records/read_statement.h"

namespace dyeleaf {

namespace {

const std::string where_hazards_stand =
    "copy the codes from section 2 of the supplier's safety data sheet: H or EUH and three digits, like H317";

bool exists(std::string_view code) {
    return !classes_of(code).empty();
}

// Code and category of "H228 cat 2", "H228 (category 2)", "H242 type E".
struct Categorised {
    std::string code, category;
};
Categorised taken_apart(std::string_view text) {
    const std::string lower = lower_case(text);
    for (const std::string_view word : {"category", "cat", "type", "division", "div"}) {
        const std::size_t at = lower.find(word);
        if (at == std::string::npos || at == 0) continue;
        std::string_view code = trimmed(text.substr(0, at));
        std::string_view category = text.substr(at + word.size());
        while (code.ends_with('(') || code.ends_with(','))
            code = trimmed(code.substr(0, code.size() - 1));
        while (category.starts_with('.') || category.starts_with(' '))
            category.remove_prefix(1);
        while (category.ends_with(')') || category.ends_with(' '))
            category.remove_suffix(1);
        return {closed_up(code), std::string{category}};
    }
    return {closed_up(text), {}};
}

std::vector<std::string_view> known_hazards() {
    std::vector<std::string_view> codes;
    for (const HazardClass& one : hazard_classes()) {
        if (codes.empty() || codes.back() != one.code) codes.push_back(one.code);
    }
    return codes;
}

// Of parts that exist and do not exist together.
std::optional<std::string> about_combination(const std::string& code) {
    std::vector<std::string> parts = split_at(code, '+');
    if (parts.size() < 2 || !std::ranges::all_of(parts, exists)) return std::nullopt;
    std::ranges::sort(parts);
    const std::string in_order = joined(parts, "+");
    return exists(in_order) ? "write " + in_order : "write its codes one by one: " + joined(parts, ", ");
}

// "H228 2" for "H228 cat 2".
std::optional<std::string> with_category(std::string_view text) {
    const std::size_t space = text.find(' ');
    if (space == std::string_view::npos) return std::nullopt;
    const std::string code = tidied(text.substr(0, space));
    const std::string category{trimmed(text.substr(space))};
    const bool holds = std::ranges::any_of(
        classes_of(code), [&](const HazardClass& one) { return !one.categories.empty() && one.holds_for(category); });
    return holds ? std::optional{code + " cat " + category} : std::nullopt;
}

bool begins_with_figures_after(std::string_view text, std::string_view letters) {
    return text.size() > letters.size() && text.starts_with(letters) && text[letters.size()] >= '0' &&
           text[letters.size()] <= '9';
}

// What is on a sheet beside the codes.
std::optional<CodeComplaint> about_other_marks(const std::string& text) {
    const std::string mark = tidied(text);
    if (begins_with_figures_after(mark, "GHS"))
        return CodeComplaint{quoted_code(text) + " is a pictogram, which follows from the codes", where_hazards_stand};
    // Directive 67/548/EEC, which had the R and S phrases, was repealed as of 1 June 2015: CLP, Art. 60.
    if (begins_with_figures_after(mark, "R"))
        return CodeComplaint{quoted_code(text) + " is of the kind that was given up in 2015",
                             "ask the supplier for a newer sheet, and copy the codes with an H from its section 2"};
    return std::nullopt;
}

CodeComplaint about_hazard(const std::string& text, const std::string& code) {
    if (looks_like_precaution(text)) {
        return {quoted_code(text) + " is a precaution, not a hazard",
                "write it in a list of its own: precautions: [" + closed_up(text) + "]"};
    }
    const std::string not_one = quoted_code(text) + " is not a hazard code";
    const std::string first = first_word_tidied(text);
    if (exists(tidied(code))) return {not_one, "write " + tidied(code)};
    if (const auto apart = about_combination(tidied(code))) return {not_one, *apart};
    const auto several = codes_among(text, exists);
    if (several.size() > 1) return {not_one, "write each of them by itself: " + joined(several, ", ")};
    if (const auto meant = with_category(text)) return {not_one, "write " + *meant};
    if (exists(first)) return {not_one, write_alone(first)};
    if (const auto other = about_other_marks(text)) return *other;
    const bool well_formed = begins_with_figures_after(code, "H") && code.size() == 4;
    return {not_one, look_again(code, known_hazards(),
                                well_formed ? "look at the sheet again; it stands in none of the published lists"
                                            : where_hazards_stand)};
}

std::optional<CodeComplaint> about_category(const std::string& code, const std::string& category) {
    const auto classes = classes_of(code);
    if (std::ranges::any_of(classes, [&](const HazardClass& one) { return one.holds_for(category); })) return {};
    std::vector<std::string> categories;
    for (const HazardClass& one : classes) {
        if (!one.categories.empty()) categories.push_back(joined(split_at(one.categories, ' '), " or "));
    }
    if (categories.empty()) return CodeComplaint{code + " has no categories", "write " + code};
    return CodeComplaint{code + " has no category " + in_quotes(category),
                         "look at the sheet again; " + code + " stands for category " + joined(categories, " or ")};
}

std::optional<Hazard> read_hazard(const Node& node, Diagnostics& diagnostics) {
    const auto written = read_statement(node, "hazard", "EUH208", diagnostics);
    if (!written) return std::nullopt;
    const auto [code, category] = taken_apart(written->text);
    const bool known = exists(code);
    const auto complaint = !known              ? std::optional{about_hazard(written->text, code)}
                           : !category.empty() ? about_category(code, category)
                                               : std::nullopt;
    if (!complaint) return Hazard{code, category, written->says, written->spot};
    diagnostics.error(written->spot, complaint->message, complaint->help);
    return std::nullopt;
}

} // namespace

std::optional<std::vector<Hazard>> read_hazards(const Node& node, const std::string& what, Diagnostics& diagnostics) {
    if (node.kind == Node::Kind::scalar) {
        const std::string text{trimmed(node.text)};
        const bool all_codes = std::ranges::all_of(
            split_at(text, ','), [](const std::string& one) { return exists(taken_apart(one).code); });
        const auto codes = codes_among(text, exists);
        diagnostics.error(node.spot, what + " is a list, and here stands text",
                          all_codes       ? "write hazards: [" + text + "]"
                          : codes.empty() ? "write hazards: [] if the supplier's sheet lists none, its codes in the "
                                            "brackets if it lists some; leave the line out when you have no sheet"
                                          : "write hazards: [" + joined(codes, ", ") + "]");
        return std::nullopt;
    }
    return read_statements<Hazard>(node, what, "hazards: [H317, H319]", read_hazard, diagnostics);
}

} // namespace dyeleaf
