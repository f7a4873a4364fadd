#include "cli/substitutes.h"

#include "base/nearest.h"
#include "base/number.h"
#include "base/plain_figures.h"
#include "base/words.h"
#include "cli/report.h"
#include "cli/substitute_reasons.h"
#include "cli/swatch_places.h"
#include "facts/dye_wording.h"
#include "facts/selection.h"
#include "facts/substitutes.h"
#include "facts/swatches.h"

#include <algorithm>
#include <functional>
#include <sstream>

namespace dyeleaf {

namespace {

using Texts = std::vector<std::string>;

std::string name_words(const Dye& dye) {
    return dye.name + " (" + dye.code + ", " + dye.line + ")";
}

std::string match_words(LotMatch match, bool is_measured) {
    switch (match) {
    case LotMatch::alike: return "alike";
    case LotMatch::a_little: return "differ a little";
    case LotMatch::visible: return is_measured ? "differ visibly" : "seem to differ visibly";
    case LotMatch::too_much: return is_measured ? "another colour" : "seems another colour";
    case LotMatch::uncertain: break;
    }
    return "not told apart by photograph or eye";
}

std::string ranked_words(const Records& records, const Language& english, const Dye& wanted,
                         const std::vector<Substitute>& ranked) {
    std::vector<Texts> rows = {{"", "CODE", "NAME", "LINE", "ΔE00", "COLOURS", "", "COMPARED AT"}};
    for (const Substitute& one : ranked) {
        rows.push_back({std::to_string(rows.size()), one.dye->code, one.dye->name, one.dye->line,
                        fixed(one.delta_e_2000, 1), one.is_measured ? "measured" : "not measured",
                        match_words(one.match, one.is_measured), places(records, one.pairs)});
    }
    std::istringstream lines{table(rows)};
    std::string text;
    std::string line;
    std::getline(lines, line);
    text += line + "\n";
    const std::string indent(std::to_string(ranked.size()).size() + 4, ' ');
    for (const Substitute& one : ranked) {
        std::getline(lines, line);
        text += line + "\n" + indent + colour_reasons(records, english, wanted, one) + "\n" + indent +
                other_reasons(english, wanted, *one.dye) + "\n";
    }
    return text;
}

std::string lack_words(const Records& records, const Substitutes& found, Lack lack) {
    Texts bases;
    for (const Swatch* swatch : found.wanted)
        add_once(bases, records.base(swatch->base.value).name);
    const std::string there = joined(bases, " or ");
    switch (lack) {
    case Lack::never_swatched: return "never swatched";
    case Lack::on_other_bases: return "never swatched on " + there;
    case Lack::at_other_depths: return "not swatched at a like depth on " + there;
    case Lack::without_colour: break;
    }
    return "swatched there, but no colour recorded";
}

std::string others_words(const Records& records, const Substitutes& found) {
    if (found.others.empty()) return {};
    std::vector<Texts> rows;
    for (const NotComparable& one : found.others)
        rows.push_back({one.dye->code, one.dye->name, one.dye->line, lack_words(records, found, one.lack)});
    return "\nNot comparable:\n" + table(rows);
}

// What one wish left out, known and unknown.
struct Reason {
    std::string option, known, unknown;
};

Reason reason_of(const Language& english, const Wishes& wishes, Wish wish) {
    const std::string untried = "nobody has tried";
    switch (wish) {
    case Wish::line: return {"--line", "of another line", {}};
    case Wish::dye_class: return {"--class", "of another class", "class not on record"};
    case Wish::holds_together: return {"--holds-together", "breaks", untried};
    case Wish::speckles: return {"--speckles", "speckles worse than " + words(english, *wishes.speckles), untried};
    case Wish::in_stock: break;
    }
    return {"--in-stock", "discontinued or used up", "stock not on record"};
}

std::string left_out_words(const Language& english, const Wishes& wishes, const std::vector<LeftOut>& left_out) {
    std::string text;
    for (const LeftOut& one : left_out) {
        const Reason reason = reason_of(english, wishes, one.wish);
        Texts texts;
        if (one.known > 0) texts.push_back(std::to_string(one.known) + " (" + reason.known + ")");
        if (one.unknown > 0) texts.push_back(std::to_string(one.unknown) + " (" + reason.unknown + ")");
        text += "Left out by " + reason.option + ": " + joined(texts, ", ") + "\n";
    }
    return text.empty() ? text : "\n" + text;
}

std::string words_of_all(const Records& records, const Language& english, const Wanted& wanted, const Wishes& wishes,
                         std::size_t most) {
    Substitutes found = find_substitutes(records, wanted, wishes);
    const std::size_t all = found.ranked.size();
    found.ranked.resize(std::min(all, most));
    std::string text = "Nearest to " + name_words(*wanted.dye) + " at " + places(records, found.wanted) + "\n";
    text += found.ranked.empty() ? "  none of your other dyes can be compared with it so\n"
                                 : ranked_words(records, english, *wanted.dye, found.ranked);
    if (all > most)
        text += counted(static_cast<int>(all - most), "more is", "more are") + " further off: --most " +
                std::to_string(all) + " shows all\n";
    text += others_words(records, found) + left_out_words(english, wishes, found.left_out);
    if (std::ranges::any_of(found.ranked, [](const Substitute& one) { return one.pairs.size() > 1; }))
        text += "\nΔE00 is the mean where several swatches are compared; --depth and --base choose which.\n";
    return text;
}

// --- what was asked for ---

void check_known(const std::string& wanted, const std::string& what, const Texts& known,
                 const std::function<bool(const std::string&)>& is_meant, Diagnostics& diagnostics) {
    if (wanted.empty() || std::ranges::any_of(known, is_meant)) return;
    diagnostics.error({}, "there is no " + what + " " + in_quotes(wanted), suggest(wanted, known));
}

void check_wishes(const Records& records, const Wishes& wishes, Diagnostics& diagnostics) {
    Texts lines;
    Texts classes;
    for (const Dye& dye : records.dyes) {
        add_once(lines, dye.line);
        add_once(classes, dye.dye_class.value_or(""));
    }
    check_known(
        wishes.line, "line", lines,
        [&](const std::string& line) { return lower_case(line) == lower_case(wishes.line); }, diagnostics);
    check_known(
        wishes.dye_class, "class of dyes", classes,
        [&](const std::string& one) { return is_of_class(one, wishes.dye_class); }, diagnostics);
}

// Whether there is a colour to compare with, where it was asked for.
void check_wanted(const Records& records, const Wanted& wanted, Diagnostics& diagnostics) {
    const Dye& dye = *wanted.dye;
    Texts swatched;
    bool is_there = false;
    bool has_colour = false;
    for (const Swatch* swatch : swatches_in_order(dye)) {
        add_once(swatched, places(records, {swatch}));
        const bool is_meant = (wanted.base == nullptr || swatch->base.value == wanted.base->id.value) &&
                              (!wanted.depth || swatch == swatch_at(dye, *wanted.depth, swatch->base.value));
        is_there = is_there || is_meant;
        has_colour = has_colour || (is_meant && swatch->colour);
    }
    if (has_colour) return;
    std::string where;
    if (wanted.depth) where += " at " + plain(*wanted.depth);
    if (wanted.base != nullptr) where += " on " + wanted.base->name;
    if (is_there) {
        diagnostics.error(dye.spot, "no colour is recorded of " + dye.name + where + ", so nothing can be near it",
                          R"(write colour: "#8d7fa8" in one of its swatches, or choose one that has a colour)");
    } else {
        diagnostics.error(dye.spot, dye.name + " was never swatched" + where,
                          swatched.empty() ? "a swatch needs a depth, a base and a colour, for dyes to be compared"
                                           : "its swatches are: " + joined(swatched, ", "));
    }
}

} // namespace

std::optional<std::string> list_substitutes(const FindSubstitutes& request, const Records& records,
                                            const Language& english, Diagnostics& diagnostics) {
    Wanted wanted{find_dye(records, request.dye, diagnostics), request.depth};
    if (request.base) wanted.base = find_base(records, *request.base, diagnostics);
    check_wishes(records, request.wishes, diagnostics);
    if (wanted.dye == nullptr || diagnostics.errors() > 0) return std::nullopt;
    check_wanted(records, wanted, diagnostics);
    if (diagnostics.errors() > 0) return std::nullopt;
    return words_of_all(records, english, wanted, request.wishes, static_cast<std::size_t>(request.most));
}

} // namespace dyeleaf
