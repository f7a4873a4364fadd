// What hazards and precautions have in common where they are read.
#pragma once

#include "records/read_fields.h"

#include <algorithm>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace dyeleaf {

// A statement as written, before a look at whether there is such a code.
struct WrittenStatement {
    std::string text;
    std::optional<std::string> says;
    Spot spot; // of the code
};

// What is wrong with a code, and what to write instead.
struct CodeComplaint {
    std::string message, help;
};

// A code alone, or {code: …, says: …}. `what` is "hazard" or "precaution", `example` a code.
std::optional<WrittenStatement> read_statement(const Node& node, const std::string& what, const std::string& example,
                                               Diagnostics& diagnostics);

// For messages, cut where it is long.
std::string quoted_code(std::string_view text);
// The parts of "H302 + H312", trimmed.
std::vector<std::string> split_at(std::string_view text, char mark);
// "H302+H312" for "H302 + H312".
std::string closed_up(std::string_view code);
// "H334" for "h 334" and "H-334".
std::string tidied(std::string_view text);
// What tidied() makes of the first word of a text: "H319" for "h319 Causes …".
std::string first_word_tidied(std::string_view text);
// The codes among the words of a text, tidied: {"H317", "H334"} for "h317; H334 (allergy)".
std::vector<std::string> codes_among(std::string_view text, bool (*exists)(std::string_view));
// For a help, where words stand behind a code.
std::string write_alone(const std::string& code);
// P and three digits, one or several with + between, in capitals or not.
bool looks_like_precaution(std::string_view text);
// For a help: the single codes that differ from this one in their last character; `otherwise` where there are none.
std::string look_again(std::string_view code, std::span<const std::string_view> known, const std::string& otherwise);

// The list of either; what stands in it twice is a warning.
template <class Statement>
std::vector<Statement> read_statements(const Node& node, const std::string& what, const std::string& example,
                                       std::optional<Statement> (*read)(const Node&, Diagnostics&),
                                       Diagnostics& diagnostics) {
    std::vector<Statement> statements;
    for (const Node& one : read_list(node, what, example, diagnostics)) {
        auto statement = read(one, diagnostics);
        if (!statement) continue;
        const bool twice = std::ranges::any_of(statements, [&](const Statement& other) {
            return other.code == statement->code && other.says == statement->says;
        });
        if (twice) {
            diagnostics.warning(statement->spot, in_quotes(statement->code) + " stands in this list twice",
                                "keep one of the two");
        } else {
            statements.push_back(std::move(*statement));
        }
    }
    return statements;
}

} // namespace dyeleaf
