// Calendar dates.
#include "base/date.h"

#include <catch2/catch.hpp>

using namespace dyeleaf;

TEST_CASE("dates are known to the day, the month or the year", "[base]") {
    CHECK(parse_iso_date("2026-11-02") == Date{2026, 11, 2});
    CHECK(parse_iso_date("2026-11") == Date{2026, 11, 0});
    CHECK(parse_iso_date("2026") == Date{2026, 0, 0});
    for (const char* text : {"2026-11-02", "2026-11", "2026"})
        CHECK(to_iso(*parse_iso_date(text)) == text);
}

TEST_CASE("days that do not exist are none", "[base]") {
    CHECK(parse_iso_date("2024-02-29")); // ISO 8601: 2024 is a leap year, 1900 and 2023 are not, 2000 is
    CHECK(parse_iso_date("2000-02-29"));
    for (const char* text :
         {"2023-02-29", "1900-02-29", "2026-02-30", "2026-04-31", "2026-13", "2026-00", "2026-01-00"}) {
        INFO(text);
        CHECK_FALSE(parse_iso_date(text));
    }
}

TEST_CASE("other shapes are no dates", "[base]") {
    for (const char* text :
         {"", "26", "2026-1-5", "2026/11/02", "02.11.2026", "20261102", "2026-W45", "-026", "2026-11-0a"}) {
        INFO(text);
        CHECK_FALSE(parse_iso_date(text));
    }
}

TEST_CASE("what is known less precisely comes first", "[base]") {
    CHECK(Date{2026, 0, 0} < Date{2026, 1, 0});
    CHECK(Date{2026, 11, 0} < Date{2026, 11, 1});
    CHECK(Date{2025, 12, 31} < Date{2026, 0, 0});
}

// ISO 8601 calendar dates; the last two are arithmetic on what is known of the date.
TEST_CASE("months are counted on the calendar", "[base]") {
    CHECK(later_by({2026, 11, 2}, {6}) == Date{2027, 5, 2});
    CHECK(later_by({2026, 8, 31}, {6}) == Date{2027, 2, 28});
    CHECK(later_by({2027, 8, 31}, {6}) == Date{2028, 2, 29});
    CHECK(later_by({2026, 12, 31}, {12}) == Date{2027, 12, 31});
    CHECK(later_by({2026, 10, 31}, {2}) == Date{2026, 12, 31});
    CHECK(later_by({2026, 5, 0}, {8}) == Date{2027, 1, 0});
    CHECK(later_by({2026, 0, 0}, {6}) == Date{2026, 0, 0});
    CHECK(later_by({2026, 0, 0}, {24}) == Date{2028, 0, 0});
}

TEST_CASE("a date is over when all of it lies behind", "[base]") {
    CHECK(is_over({2026, 11, 19}, {2026, 11, 20}));
    CHECK_FALSE(is_over({2026, 11, 20}, {2026, 11, 20}));
    CHECK_FALSE(is_over({2026, 11, 0}, {2026, 11, 20}));
    CHECK(is_over({2026, 10, 0}, {2026, 11, 20}));
    CHECK_FALSE(is_over({2026, 0, 0}, {2026, 11, 20}));
    CHECK(is_over({2025, 0, 0}, {2026, 11, 20}));
    CHECK_FALSE(is_over({2027, 1, 1}, {2026, 11, 20}));
    CHECK_FALSE(is_over({2026, 11, 20}, {2026, 11, 0}));
    CHECK_FALSE(is_over({2026, 11, 20}, {2026, 0, 0}));
    CHECK(is_over({2026, 11, 20}, {2026, 12, 0}));
}
