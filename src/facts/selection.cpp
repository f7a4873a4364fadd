#include "facts/selection.h"

#include "base/nearest.h"
#include "base/number.h"
#include "base/words.h"
#include "facts/skein_numbers.h"

#include <algorithm>
#include <functional>
#include <numeric>
#include <optional>
#include <string>
#include <string_view>
#include <type_traits>

namespace dyeleaf {

namespace {

bool is_named(std::string_view name, std::string_view selector) {
    return !name.empty() && lower_case(name) == lower_case(selector);
}

template <class Record> using Naming = std::function<bool(const Record&, const std::string& selector)>;

// Ways of naming records, the most exact first: an id is never taken for a name that many share.
template <class Record> using Namings = std::vector<Naming<Record>>;

template <class Record> bool has_id(const Record& record, const std::string& selector) {
    return record.id.value == selector;
}

// Where the records stand that the first way means by which the selector means any.
template <class List>
std::vector<std::size_t> meant(const List& records, const std::string& selector,
                               const Namings<typename List::value_type>& namings) {
    std::vector<std::size_t> found;
    for (const auto& names : namings) {
        for (std::size_t i = 0; i < records.size(); ++i) {
            if (names(records[i], selector)) found.push_back(i);
        }
        if (!found.empty()) break;
    }
    return found;
}

// The records that any selector means. `known` are all names that mean something.
template <class List, class Record = typename List::value_type>
std::vector<const Record*> select(const List& records, const Selection& selection,
                                  const std::type_identity_t<Namings<Record>>& namings, std::string_view what,
                                  const std::vector<std::string>& known, Diagnostics& diagnostics) {
    std::vector<bool> wanted(records.size(), selection.only.empty());
    for (const std::string& selector : selection.only) {
        const std::vector<std::size_t> found = meant(records, selector, namings);
        for (const std::size_t i : found)
            wanted[i] = true;
        if (found.empty()) {
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

template <class List> std::vector<std::string> ids(const List& records) {
    std::vector<std::string> result;
    result.reserve(records.size());
    for (const auto& record : records)
        result.push_back(record.id.value);
    return result;
}

template <class Record>
const Record* find_one(const std::vector<Record>& records, const std::string& wanted, const std::string& what,
                       const std::function<std::string(const Record&)>& described, Diagnostics& diagnostics) {
    const Namings<Record> namings = {
        has_id<Record>, [](const Record& record, const std::string& name) { return is_named(record.code, name); },
        [](const Record& record, const std::string& name) { return is_named(record.name, name); }};
    const std::vector<std::size_t> found = meant(records, wanted, namings);
    if (found.size() == 1) return &records[found.front()];
    std::vector<std::string> known;
    if (found.empty()) {
        known = ids(records);
        for (const Record& record : records) {
            add_once(known, record.code);
            add_once(known, record.name);
        }
        diagnostics.error({}, "there is no " + what + " " + in_quotes(wanted), suggest(wanted, known));
        return nullptr;
    }
    for (const std::size_t i : found)
        known.push_back(in_quotes(records[i].id.value) + " for " + described(records[i]));
    diagnostics.error({}, std::to_string(found.size()) + " " + what + "s are called " + in_quotes(wanted),
                      "say which by its id: " + joined(known, ", "));
    return nullptr;
}

// --- dyes, and jars by the dyes in them ---

bool has_code_or_line(const Dye& dye, const std::string& selector) {
    return is_named(dye.code, selector) || is_named(dye.line, selector);
}

std::vector<std::string> dye_names(const Records& records) {
    std::vector<std::string> names = ids(records.dyes);
    for (const Dye& dye : records.dyes) {
        add_once(names, dye.line);
        add_once(names, dye.code);
    }
    return names;
}

Namings<Jar> jar_namings(const Records& records) {
    const auto by_dye = [&records](const Naming<Dye>& names) {
        return [&records, names](const Jar& jar, const std::string& selector) {
            return std::ranges::any_of(jar.parts, [&](const Part& part) {
                return part.is_dye && names(records.dye(part.id.value), selector);
            });
        };
    };
    return {has_id<Jar>, [](const Jar& jar, const std::string& selector) { return is_named(jar.code, selector); },
            by_dye(has_id<Dye>), by_dye(has_code_or_line)};
}

std::vector<std::string> jar_names(const Records& records) {
    std::vector<std::string> names = ids(records.jars);
    for (const Jar& jar : records.jars)
        add_once(names, jar.code);
    for (const std::string& name : dye_names(records))
        add_once(names, name);
    return names;
}

// --- lots and their skeins ---

Namings<Lot> lot_namings() {
    return {has_id<Lot>, [](const Lot& lot, const std::string& selector) {
                return lot.base.value == selector || is_named(lot.colourway, selector);
            }};
}

std::vector<std::string> lot_names(const Records& records) {
    std::vector<std::string> names = ids(records.lots);
    for (const Lot& lot : records.lots) {
        add_once(names, lot.colourway);
        add_once(names, lot.base.value);
    }
    return names;
}

// "26-117:3-5", taken apart. What names whole lots has no range, though there may be a colon in it.
struct SkeinSelector {
    std::string lot;
    bool has_range = false;
    std::optional<int> first, last; // nothing where that is not a number
};

SkeinSelector take_apart(const std::deque<Lot>& lots, const std::string& selector) {
    const auto colon = selector.rfind(':');
    if (!meant(lots, selector, lot_namings()).empty() || colon == std::string::npos) return {selector, false, {}, {}};
    const std::string_view range = std::string_view{selector}.substr(colon + 1);
    const auto dash = range.find('-');
    if (dash == std::string_view::npos) {
        const auto number = parse_whole(range);
        return {selector.substr(0, colon), true, number, number};
    }
    return {selector.substr(0, colon), true, parse_whole(range.substr(0, dash)), parse_whole(range.substr(dash + 1))};
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
    return select(records.dyes, selection, {has_id<Dye>, has_code_or_line}, "dye or line", dye_names(records),
                  diagnostics);
}

std::vector<const Jar*> select_jars(const Records& records, const Selection& selection, Diagnostics& diagnostics) {
    return select(records.jars, selection, jar_namings(records), "jar", jar_names(records), diagnostics);
}

std::vector<const Lot*> select_lots(const Records& records, const Selection& selection, Diagnostics& diagnostics) {
    return select(records.lots, selection, lot_namings(), "lot", lot_names(records), diagnostics);
}

std::vector<const Base*> select_bases(const Records& records, const Selection& selection, Diagnostics& diagnostics) {
    return select(records.bases, selection, {has_id<Base>}, "base", ids(records.bases), diagnostics);
}

const Dye* find_dye(const Records& records, const std::string& wanted, Diagnostics& diagnostics) {
    return find_one<Dye>(
        records.dyes, wanted, "dye", [](const Dye& dye) { return dye.name + " (" + dye.code + ", " + dye.line + ")"; },
        diagnostics);
}

const Base* find_base(const Records& records, const std::string& wanted, Diagnostics& diagnostics) {
    return find_one<Base>(
        records.bases, wanted, "base", [](const Base& base) { return base.name + " (" + base.code + ")"; },
        diagnostics);
}

std::vector<Skein> select_skeins(const Records& records, const Selection& selection, Diagnostics& diagnostics) {
    std::vector<std::vector<bool>> wanted;
    for (const Lot& lot : records.lots)
        wanted.emplace_back(static_cast<std::size_t>(std::max(lot.skeins, 0)), selection.only.empty());

    for (const std::string& selector : selection.only) {
        const SkeinSelector range = take_apart(records.lots, selector);
        // A range counts the skeins of one lot.
        const Namings<Lot> namings = range.has_range ? Namings<Lot>{has_id<Lot>} : lot_namings();
        const std::vector<std::size_t> found = meant(records.lots, range.lot, namings);
        if (found.empty()) {
            diagnostics.error({}, "there is no lot " + in_quotes(range.lot),
                              suggest(range.lot, range.has_range ? ids(records.lots) : lot_names(records)));
        }
        for (const std::size_t i : found) {
            const Lot& lot = records.lots[i];
            if (range.has_range && !is_sound(range, lot, selector, diagnostics)) continue;
            for (int number = range.first.value_or(1); number <= range.last.value_or(lot.skeins); ++number)
                wanted[i][static_cast<std::size_t>(number - 1)] = true;
        }
    }

    std::vector<Skein> result;
    const auto count = [](std::size_t sum, const std::vector<bool>& lot) {
        return sum + static_cast<std::size_t>(std::ranges::count(lot, true));
    };
    result.reserve(std::accumulate(wanted.begin(), wanted.end(), std::size_t{}, count));
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
