#include "facts/selection.h"

#include "base/nearest.h"
#include "base/number.h"
#include "base/words.h"

#include <algorithm>
#include <optional>
#include <string>
#include <string_view>

namespace dyeleaf {

namespace {

bool same_words(std::string_view a, std::string_view b) {
    return lower_case(a) == lower_case(b);
}

// The records that any selector means; `means(record, selector)` says so.
template <class Record, class Means>
std::vector<const Record*> select(const std::vector<Record>& records, const Selection& selection, Means means,
                                  std::string_view what, const std::vector<std::string>& known,
                                  Diagnostics& diagnostics) {
    std::vector<bool> wanted(records.size(), selection.only.empty());
    for (const std::string& selector : selection.only) {
        bool found = false;
        for (std::size_t i = 0; i < records.size(); ++i) {
            if (!means(records[i], selector)) continue;
            found = true;
            wanted[i] = true;
        }
        if (!found) {
            diagnostics.error({}, "there is no " + std::string{what} + " " + in_quotes(selector),
                              suggest(selector, known));
        }
    }
    std::vector<const Record*> result;
    for (std::size_t i = 0; i < records.size(); ++i) {
        if (wanted[i]) result.push_back(&records[i]);
    }
    return result;
}

template <class Record> std::vector<std::string> ids(const std::vector<Record>& records) {
    std::vector<std::string> result;
    result.reserve(records.size());
    for (const Record& record : records)
        result.push_back(record.id.value);
    return result;
}

template <class Record>
std::vector<const Record*> select_by_id(const std::vector<Record>& records, const Selection& selection,
                                        std::string_view what, Diagnostics& diagnostics) {
    const auto means = [](const Record& record, const std::string& selector) { return record.id.value == selector; };
    return select(records, selection, means, what, ids(records), diagnostics);
}

// "26-117:3-5", taken apart. A whole lot has no range.
struct SkeinSelector {
    std::string lot;
    bool has_range = false;
    std::optional<int> first, last; // nothing where that is not a number
};

SkeinSelector take_apart(const std::vector<Lot>& lots, const std::string& selector) {
    const bool is_lot = std::ranges::any_of(lots, [&](const Lot& lot) { return lot.id.value == selector; });
    const auto colon = selector.rfind(':');
    if (is_lot || colon == std::string::npos) return {selector, false, {}, {}};
    const std::string_view range = std::string_view{selector}.substr(colon + 1);
    const auto dash = range.find('-');
    if (dash == std::string_view::npos) {
        const auto number = parse_whole(range);
        return {selector.substr(0, colon), true, number, number};
    }
    return {selector.substr(0, colon), true, parse_whole(range.substr(0, dash)), parse_whole(range.substr(dash + 1))};
}

bool is_spoilt(const Lot& lot, int number) {
    return std::ranges::find(lot.spoilt, number) != lot.spoilt.end();
}

// Checks the range and says what is wrong with it.
bool is_sound(const SkeinSelector& wanted, const Lot& lot, const std::string& selector, Diagnostics& diagnostics) {
    const std::string has = "lot " + lot.id.value + " has skeins 1 to " + std::to_string(lot.skeins);
    if (!wanted.first || !wanted.last) {
        diagnostics.error({}, in_quotes(selector) + " does not say which skeins",
                          "write one number or two: " + lot.id.value + ":3 or " + lot.id.value + ":3-5");
        return false;
    }
    if (*wanted.first > *wanted.last) {
        diagnostics.error({}, in_quotes(selector) + " counts backwards", "write the smaller number first");
        return false;
    }
    if (*wanted.first < 1 || *wanted.last > lot.skeins) {
        diagnostics.error({}, in_quotes(selector) + " asks for skeins that there are not", has);
        return false;
    }
    if (wanted.first == wanted.last && is_spoilt(lot, *wanted.first)) {
        diagnostics.error(
            lot.spot, "skein " + std::to_string(*wanted.first) + " of lot " + lot.id.value + " is recorded as spoilt",
            "take its number out of “spoilt” to print its tag");
        return false;
    }
    return true;
}

} // namespace

namespace {

void add_once(std::vector<std::string>& names, const std::string& name) {
    if (!name.empty() && std::ranges::find(names, name) == names.end()) names.push_back(name);
}

bool means_dye(const Dye& dye, const std::string& selector) {
    return dye.id.value == selector || same_words(dye.code, selector) || same_words(dye.line, selector);
}

bool means_jar(const Records& records, const Jar& jar, const std::string& selector) {
    if (jar.id.value == selector || same_words(jar.code, selector)) return true;
    const auto holds = [&](const Dye& dye) {
        return std::ranges::any_of(jar.parts,
                                   [&](const Part& part) { return part.is_dye && part.id.value == dye.id.value; });
    };
    return std::ranges::any_of(records.dyes, [&](const Dye& dye) { return means_dye(dye, selector) && holds(dye); });
}

bool means_lot(const Lot& lot, const std::string& selector) {
    return lot.id.value == selector || lot.base.value == selector || same_words(lot.colourway, selector);
}

std::vector<std::string> dye_names(const Records& records) {
    std::vector<std::string> names = ids(records.dyes);
    for (const Dye& dye : records.dyes) {
        add_once(names, dye.line);
        add_once(names, dye.code);
    }
    return names;
}

std::vector<std::string> lot_names(const Records& records) {
    std::vector<std::string> names = ids(records.lots);
    for (const Lot& lot : records.lots) {
        add_once(names, lot.colourway);
        add_once(names, lot.base.value);
    }
    return names;
}

} // namespace

std::vector<const Dye*> select_dyes(const Records& records, const Selection& selection, Diagnostics& diagnostics) {
    return select(records.dyes, selection, means_dye, "dye or line", dye_names(records), diagnostics);
}

std::vector<const Jar*> select_jars(const Records& records, const Selection& selection, Diagnostics& diagnostics) {
    std::vector<std::string> known = ids(records.jars);
    for (const Jar& jar : records.jars)
        add_once(known, jar.code);
    for (const std::string& name : dye_names(records))
        add_once(known, name);
    const auto means = [&](const Jar& jar, const std::string& selector) { return means_jar(records, jar, selector); };
    return select(records.jars, selection, means, "jar", known, diagnostics);
}

std::vector<const Lot*> select_lots(const Records& records, const Selection& selection, Diagnostics& diagnostics) {
    return select(records.lots, selection, means_lot, "lot", lot_names(records), diagnostics);
}

std::vector<const Base*> select_bases(const Records& records, const Selection& selection, Diagnostics& diagnostics) {
    return select_by_id(records.bases, selection, "base", diagnostics);
}

std::vector<Skein> select_skeins(const Records& records, const Selection& selection, Diagnostics& diagnostics) {
    std::vector<std::vector<bool>> wanted;
    for (const Lot& lot : records.lots)
        wanted.emplace_back(static_cast<std::size_t>(std::max(lot.skeins, 0)), selection.only.empty());

    for (const std::string& selector : selection.only) {
        const SkeinSelector range = take_apart(records.lots, selector);
        bool found = false;
        for (std::size_t i = 0; i < records.lots.size(); ++i) {
            const Lot& lot = records.lots[i];
            // A range counts the skeins of one lot; a base or a colourway stands for all of its lots.
            if (range.has_range ? lot.id.value != range.lot : !means_lot(lot, range.lot)) continue;
            found = true;
            if (range.has_range && !is_sound(range, lot, selector, diagnostics)) continue;
            for (int number = range.first.value_or(1); number <= range.last.value_or(lot.skeins); ++number)
                wanted[i][static_cast<std::size_t>(number - 1)] = true;
        }
        if (!found) {
            diagnostics.error({}, "there is no lot " + in_quotes(range.lot), suggest(range.lot, lot_names(records)));
        }
    }

    std::vector<Skein> result;
    for (std::size_t i = 0; i < wanted.size(); ++i) {
        const Lot& lot = records.lots[i];
        for (int number = 1; number <= lot.skeins; ++number) {
            if (wanted[i][static_cast<std::size_t>(number - 1)] && !is_spoilt(lot, number)) {
                result.push_back({&lot, number});
            }
        }
    }
    return result;
}

} // namespace dyeleaf
