// A calendar date known to the day, the month or the year (ISO 8601 calendar dates; proleptic Gregorian).
#pragma once

#include <compare>
#include <optional>
#include <string>
#include <string_view>

namespace dyeleaf {

struct Months {
    int count = 0;
};

struct Date {
    int year = 0;
    int month = 0; // 1 to 12, 0 where only the year is known
    int day = 0;   // 1 to 31, 0 where only the month is known
    friend constexpr auto operator<=>(const Date&, const Date&) = default;
};

// "2026-11-02", "2026-11" or "2026"; nothing for other shapes and for days that do not exist.
std::optional<Date> parse_iso_date(std::string_view text);
std::string to_iso(const Date& date);

// The same day so many months later, or earlier where `months` is negative; the month's last day where it does not have
// that day (Regulation (EEC, Euratom) No 1182/71, article 3(2)(c)): a month after 31 January is 28 or 29 February. A
// date known to the month stays so; one known to the year moves by whole years, what is over left off. Requires: a
// sound date, and a result from year 1 to 9999.
Date add_months(const Date& date, int months);

// Whether `date` is surely over when `other` begins; of two that are one in part, such as 2026 and 2026-11, none is.
bool is_over(const Date& date, const Date& other);

} // namespace dyeleaf
