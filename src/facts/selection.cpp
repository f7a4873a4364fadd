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

std::vector<const Dye*> select_dyes(const Records& records, const Selection& selection, Diagnostics& diagnostics) {
    std::vector<std::string> known = ids(records.dyes);
    for (const Dye& dye : records.dyes) {
        if (!dye.line.empty() && std::ranges::find(known, dye.line) == known.end()) known.push_back(dye.line);
    }
    const auto means = [](const Dye& dye, const std::string& selector) {
        return dye.id.value == selector || (!dye.line.empty() && same_words(dye.line, selector));
    };
    return select(records.dyes, selection, means, "dye or line", known, diagnostics);
}

std::vector<const Jar*> select_jars(const Records& records, const Selection& selection, Diagnostics& diagnostics) {
    return select_by_id(records.jars, selection, "jar", diagnostics);
}

std::vector<const Lot*> select_lots(const Records& records, const Selection& selection, Diagnostics& diagnostics) {
    return select_by_id(records.lots, selection, "lot", diagnostics);
}

std::vector<const Base*> select_bases(const Records& records, const Selection& selection, Diagnostics& diagnostics) {
    return select_by_id(records.bases, selection, "base", diagnostics);
}

std::vector<Skein> select_skeins(const Records& records, const Selection& selection, Diagnostics& diagnostics) {
    std::vector<std::vector<bool>> wanted;
    for (const Lot& lot : records.lots)
        wanted.emplace_back(static_cast<std::size_t>(std::max(lot.skeins, 0)), selection.only.empty());

    for (const std::string& selector : selection.only) {
        SkeinSelector range = take_apart(records.lots, selector);
        const auto lot = std::ranges::find_if(records.lots, [&](const Lot& one) { return one.id.value == range.lot; });
        if (lot == records.lots.end()) {
            diagnostics.error({}, "there is no lot " + in_quotes(range.lot), suggest(range.lot, ids(records.lots)));
            continue;
        }
        if (range.has_range && !is_sound(range, *lot, selector, diagnostics)) continue;
        auto& skeins = wanted[static_cast<std::size_t>(lot - records.lots.begin())];
        for (int number = range.first.value_or(1); number <= range.last.value_or(lot->skeins); ++number)
            skeins[static_cast<std::size_t>(number - 1)] = true;
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
