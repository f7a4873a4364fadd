#include "base/date.h"

#include "base/number.h"

#include <algorithm>
#include <chrono>
#include <fmt/format.h>

namespace dyeleaf {

namespace {

std::optional<int> digits(std::string_view text) {
    if (text.find_first_not_of("0123456789") != std::string_view::npos) return std::nullopt;
    return parse_whole(text);
}

// Rounds down below nothing too: a month before January is December of the year before.
constexpr int floor_div(int value, int by) {
    return value / by - (value % by < 0 ? 1 : 0);
}

int last_day(int year, int month) {
    const std::chrono::year_month_day_last last{std::chrono::year{year} /
                                                std::chrono::month{static_cast<unsigned>(month)} / std::chrono::last};
    return static_cast<int>(static_cast<unsigned>(last.day()));
}

} // namespace

std::optional<Date> parse_iso_date(std::string_view text) {
    if (text.size() != 4 && text.size() != 7 && text.size() != 10) return std::nullopt;
    const auto year = digits(text.substr(0, 4));
    if (!year || *year < 1) return std::nullopt;
    Date date{*year, 0, 0};
    if (text.size() == 4) return date;
    const auto month = digits(text.substr(5, 2));
    if (text[4] != '-' || !month || *month < 1 || *month > 12) return std::nullopt;
    date.month = *month;
    if (text.size() == 7) return date;
    const auto day = digits(text.substr(8, 2));
    if (text[7] != '-' || !day) return std::nullopt;
    date.day = *day;
    const std::chrono::year_month_day calendar{std::chrono::year{date.year},
                                               std::chrono::month{static_cast<unsigned>(date.month)},
                                               std::chrono::day{static_cast<unsigned>(date.day)}};
    if (!calendar.ok()) return std::nullopt;
    return date;
}

std::string to_iso(const Date& date) {
    if (date.month == 0) return fmt::format("{:04}", date.year);
    if (date.day == 0) return fmt::format("{:04}-{:02}", date.year, date.month);
    return fmt::format("{:04}-{:02}-{:02}", date.year, date.month, date.day);
}

Date add_months(const Date& date, int months) {
    if (date.month == 0) return {date.year + floor_div(months, 12), 0, 0};
    const int all = date.year * 12 + date.month - 1 + months;
    const int year = floor_div(all, 12);
    const int month = all - year * 12 + 1;
    return {year, month, std::min(date.day, last_day(year, month))};
}

bool is_over(const Date& date, const Date& other) {
    if (date.year != other.year) return date.year < other.year;
    if (date.month == 0 || other.month == 0) return false;
    if (date.month != other.month) return date.month < other.month;
    return date.day != 0 && other.day != 0 && date.day < other.day;
}

} // namespace dyeleaf
