#include "records/read_hazards.h"

#include "records/hazard_classes.h"
#include "records/precaution_codes.h"
#include "records/read_statement.h"

namespace dyeleaf {

namespace {

const std::string where_precautions_stand =
    "copy the codes from section 2 of the supplier's safety data sheet: P and three digits, like P261";

bool is_precaution(std::string_view code) {
    return std::ranges::all_of(split_at(code, '+'), is_precaution_code);
}

bool is_hazard(std::string_view text) {
    return !classes_of(closed_up(text)).empty();
}

CodeComplaint about_precaution(const std::string& text, const std::string& code) {
    if (is_hazard(text))
        return {quoted_code(text) + " is a hazard, not a precaution", "write it in the list of hazards"};
    const std::string not_one = quoted_code(text) + " is not a precaution code";
    const std::string first = first_word_tidied(text);
    if (is_precaution(tidied(code))) return {not_one, "write " + tidied(code)};
    const auto several = codes_among(text, is_precaution);
    if (several.size() > 1) return {not_one, "write each of them by itself: " + joined(several, ", ")};
    if (is_precaution(first)) return {not_one, write_alone(first)};
    if (!looks_like_precaution(code)) return {not_one, where_precautions_stand};
    for (const std::string& part : split_at(code, '+')) {
        if (is_precaution_code(part)) continue;
        return {not_one, look_again(part, precaution_codes(), "look at the sheet again") +
                             "; one that is gone from the lists is printed in the sheet's own words: {code: " + code +
                             ", says: \"…\"}"};
    }
    return {not_one, where_precautions_stand};
}

std::optional<Precaution> read_precaution(const Node& node, Diagnostics& diagnostics) {
    const auto written = read_statement(node, "precaution", "P264", diagnostics);
    if (!written) return std::nullopt;
    const std::string code = closed_up(written->text);
    const bool in_own_words = written->says && looks_like_precaution(code) && code.starts_with('P');
    if (is_precaution(code) || in_own_words) return Precaution{code, written->says, written->spot};
    const CodeComplaint complaint = about_precaution(written->text, code);
    diagnostics.error(written->spot, complaint.message, complaint.help);
    return std::nullopt;
}

} // namespace

std::optional<std::vector<Precaution>> read_precautions(const Node& node, const std::string& what,
                                                        Diagnostics& diagnostics) {
    if (node.kind == Node::Kind::scalar) {
        const std::string text{trimmed(node.text)};
        const bool all_codes = std::ranges::all_of(split_at(text, ','), is_precaution);
        const auto codes = codes_among(text, is_precaution);
        diagnostics.error(node.spot, what + " is a list, and here stands text",
                          all_codes ? "write precautions: [" + text + "]"
                          : codes.empty()
                              ? "write the codes of the sheet in brackets, as in precautions: [P261]; leave "
                                "the line out when it lists none"
                              : "write precautions: [" + joined(codes, ", ") + "]");
        return std::nullopt;
    }
    return read_statements<Precaution>(node, what, "precautions: [P261, P280]", read_precaution, diagnostics);
}

} // namespace dyeleaf
