#include "records/guess_dates.h"

#include "base/date.h"
#include "base/number.h"
#include "base/words.h"

#include <algorithm>
#include <array>
#include <optional>

namespace dyeleaf {

namespace {

bool is_figure(char c) {
    return c >= '0' && c <= '9';
}

std::vector<std::string> words_of(std::string_view text) {
    constexpr std::string_view between = " \t,./-";
    std::vector<std::string> words;
    while (true) {
        text.remove_prefix(std::min(text.find_first_not_of(between), text.size()));
        if (text.empty()) return words;
        const std::string_view word = text.substr(0, text.find_first_of(between));
        words.push_back(lower_case(word));
        text.remove_prefix(word.size());
    }
}

// "28", "28th".
std::optional<int> number_of(std::string_view word) {
    for (const std::string_view ending : {"st", "nd", "rd", "th"}) {
        if (word.ends_with(ending)) word.remove_suffix(ending.size());
    }
    return std::ranges::all_of(word, is_figure) ? parse_whole(word) : std::nullopt;
}

// "march", "mar", "sept": at least three letters that begin a month's name.
std::optional<int> month_of(std::string_view word) {
    constexpr std::array<std::string_view, 12> months = {"january",   "february", "march",    "april",
                                                         "may",       "june",     "july",     "august",
                                                         "september", "october",  "november", "december"};
    if (word.size() < 3) return std::nullopt;
    const auto month = std::ranges::find_if(months, [&](std::string_view name) { return name.starts_with(word); });
    return month == months.end() ? std::nullopt : std::optional{static_cast<int>(month - months.begin()) + 1};
}

bool is_year(int number) {
    return number >= 1900 && number <= 2199;
}

void add(std::vector<std::string>& dates, const Date& date) {
    if (date.month < 1 || date.month > 12 || date.day < 0 || date.day > 31) return;
    const std::string iso = to_iso(date);
    if (parse_iso_date(iso) && std::ranges::find(dates, iso) == dates.end()) dates.push_back(iso);
}

} // namespace

std::vector<std::string> guess_dates(std::string_view text) {
    std::optional<int> named_month;
    std::optional<int> year;
    std::vector<int> others; // days and months in figures
    bool year_first = false;
    for (const std::string& word : words_of(text)) {
        const auto number = number_of(word);
        const auto month = month_of(word);
        if (month && !named_month) {
            named_month = month;
        } else if (number && is_year(*number) && !year) {
            year = number;
            year_first = others.empty();
        } else if (number) {
            others.push_back(*number);
        } else if (word != "of") {
            return {};
        }
    }
    std::vector<std::string> dates;
    if (!year || others.size() > (named_month ? 1U : 2U)) return dates;
    if (named_month) {
        add(dates, {*year, *named_month, others.empty() ? 0 : others[0]});
    } else if (others.size() == 1) {
        add(dates, {*year, others[0], 0});
    } else if (others.size() == 2) {
        if (year_first) add(dates, {*year, others[0], others[1]}); // as ISO 8601 has them
        if (!year_first || dates.empty()) {
            add(dates, {*year, others[1], others[0]});
            add(dates, {*year, others[0], others[1]});
        }
    }
    return dates;
}

} // namespace dyeleaf
