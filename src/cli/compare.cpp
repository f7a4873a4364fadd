#include "cli/compare.h"

#include "base/number.h"
#include "base/words.h"
#include "cli/report.h"
#include "facts/lot_differences.h"

#include <algorithm>
#include <utility>

namespace dyeleaf {

namespace {

std::string advice(LotMatch match, bool is_measured) {
    const std::string by_eye = ": compare the yarn by eye in daylight";
    switch (match) {
    case LotMatch::alike: return "alike";
    case LotMatch::a_little: return "differ a little: sell what a project needs from one lot";
    case LotMatch::visible:
        if (!is_measured) return "seem to differ visibly" + by_eye;
        return "differ visibly: tell the buyer, and alternate skeins where they meet";
    case LotMatch::too_much:
        if (!is_measured) return "seem to differ too much for one name" + by_eye;
        return "differ too much for one name: give one of them another";
    case LotMatch::uncertain: break;
    }
    return "not told apart by photograph or eye" + by_eye;
}

// The two have it in common: "Hedge in October on Plain Sock".
std::string family_of(const Records& records, const Lot& lot) {
    return lot.colourway + " on " + records.base(lot.base.value).name;
}

std::string without_colour(const Records& records) {
    std::vector<std::string> ids;
    for (const Lot& lot : records.lots) {
        if (!lot.colour) ids.push_back(lot.id.value);
    }
    if (ids.empty()) return {};
    return "No colour is recorded of " + joined(ids, ", ") + ", so nothing is said of " +
           (ids.size() == 1 ? "it" : "them") + ".\n";
}

} // namespace

std::string compare_lots(const Records& records) {
    std::vector<std::pair<std::string, std::vector<std::vector<std::string>>>> tables; // by colourway, as recorded
    for (const LotDifference& one : lot_differences(records)) {
        const std::string family = family_of(records, *one.later);
        auto found = std::ranges::find(tables, family, [](const auto& entry) { return entry.first; });
        if (found == tables.end())
            found = tables.insert(found, {family, {{"LOT", "AND LOT", "ΔE00", "ΔE76", "COLOURS", ""}}});
        found->second.push_back({one.earlier->id.value, one.later->id.value, fixed(one.delta_e_2000, 1),
                                 fixed(one.delta_e_76, 1), one.is_measured ? "measured" : "not measured",
                                 advice(one.match, one.is_measured)});
    }
    std::string text;
    for (const auto& [family, rows] : tables)
        text += family + "\n" + table(rows) + "\n";
    if (tables.empty()) text = "There are no two lots of one colourway on one base with a colour each.\n";
    return text + without_colour(records);
}

} // namespace dyeleaf
