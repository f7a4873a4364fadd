// A calendar date known to the day, the month or the year (ISO 8601 calendar dates; proleptic Gregorian).
#pragma once

#include <compare>
#include <optional>
#include <string>
#include <string_view>

namespace dyeleaf {

struct Date {
    int year = 0;
    int month = 0; // 1 to 12, 0 where only the year is known
    int day = 0;   // 1 to 31, 0 where only the month is known
    friend constexpr auto operator<=>(const Date&, const Date&) = default;
};

// "2026-11-02", "2026-11" or "2026"; nothing for other shapes and for days that do not exist.
std::optional<Date> parse_iso_date(std::string_view text);
std::string to_iso(const Date& date);

struct Months {
    int count = 0;
    friend constexpr auto operator<=>(Months, Months) = default;
};
// So many months later, known as far as `date` is; a year alone moves on by whole years. Where the month has no such
// day it is the month's last: 31 August and six months are 28 February.
Date later_by(const Date& date, Months months);
// Whether `date` is surely over when `other` begins; of two that are one in part, such as 2026 and 2026-11, none is.
bool is_over(const Date& date, const Date& other);

} // namespace dyeleaf
