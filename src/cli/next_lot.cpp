#include "cli/next_lot.h"

#include "base/words.h"
#include "facts/lot_code.h"

#include <algorithm>

namespace dyeleaf {

namespace {

constexpr std::size_t remark_column = 22; // where remarks start within a block
constexpr std::size_t remark_width = 70;

// "key: value            # remark", the remark over several lines where it is long.
std::string line(const std::string& key, const std::string& value, std::string_view remark) {
    std::string text = value.empty() ? key + ":" : key + ": " + value;
    if (remark.empty()) return text + "\n";
    text.resize(std::max(text.size() + 1, remark_column), ' ');
    while (remark.size() > remark_width) {
        const std::size_t space = remark.rfind(' ', remark_width);
        if (space == std::string_view::npos) break;
        text.append("# ").append(remark.substr(0, space)).append("\n").append(remark_column, ' ');
        remark.remove_prefix(space + 1);
    }
    return text.append("# ").append(remark).append("\n");
}

std::string base_line(const std::vector<Base>& bases) {
    if (bases.size() == 1) return line("base", bases.front().id.value, "");
    std::vector<std::string> ids;
    for (const Base& base : bases)
        ids.push_back(base.id.value);
    return line("base", "", ids.empty() ? "the id of a base" : "one of: " + joined(ids, ", "));
}

std::string fields(const Records& records, const Date& day) {
    return line("colourway", "", "the name on the tag") + base_line(records.bases) +
           line("skeins", "", "how many go into the pots; one that gets spoilt stays counted") +
           line("dyed", to_iso(day), "") +
           (records.studio.currency.code.empty() ? "" : line("price", "", "of one skein, or delete this line"));
}

// Each line moved in by so many spaces.
std::string indented(const std::string& text, std::size_t spaces) {
    std::string result;
    for (std::size_t start = 0; start < text.size();) {
        const std::size_t end = text.find('\n', start) + 1;
        result.append(spaces, ' ').append(text, start, end - start);
        start = end;
    }
    return result;
}

// Where the dashes of her list stand: as far in as that of the last lot.
std::size_t dash_indent(const std::deque<Lot>& lots) {
    constexpr int dash_and_space = 2;
    constexpr int usual = 2;
    const int column = lots.empty() ? 0 : lots.back().spot.column - 1 - dash_and_space;
    return static_cast<std::size_t>(column >= 0 && column <= 4 && !lots.empty() ? column : usual);
}

} // namespace

std::string next_lot(const Records& records, const Date& day, Diagnostics& diagnostics) {
    const auto& form = records.studio.lot_codes;
    const auto code = next_lot_code(form.value_or(usual_lot_form()), records.lots, day);
    if (!code) {
        diagnostics.error({}, "there is no number left for a lot code", "give this lot a code of your own");
        return {};
    }
    const bool first = records.lots.empty();
    const std::string where = first ? "one of your files" : "your file, below the last lot";
    std::string remarks = "# Lot " + *code + ": copy this into " + where + ", and fill in what is empty.\n";
    if (!form)
        remarks += "# Its form is the usual one, yy-nnn; for another, write “lot codes: yymm-nn” under “studio”.\n";
    const std::size_t indent = dash_indent(records.lots);
    return (first ? "lots:\n" : "") +
           indented(remarks + "- id: \"" + *code + "\"\n" + indented(fields(records, day), 2), indent);
}

} // namespace dyeleaf
