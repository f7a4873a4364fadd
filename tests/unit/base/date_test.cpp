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

// A day that the last month does not have is its last day: Regulation (EEC, Euratom) No 1182/71, article 3(2)(c). Leap
// years of the Gregorian calendar: 2000 and 2024 are, 2026 and 2100 are not.
TEST_CASE("months are added to dates", "[base]") {
    struct Case {
        const char* from;
        int months;
        const char* to;
    };
    const Case cases[] = {
        {"2026-11-02", 6, "2027-05-02"},
        {"2026-01-31", 1, "2026-02-28"},
        {"2024-01-31", 1, "2024-02-29"},
        {"2000-01-31", 1, "2000-02-29"},
        {"2100-01-31", 1, "2100-02-28"},
        {"2024-02-29", 12, "2025-02-28"},
        {"2026-03-31", -1, "2026-02-28"},
        {"2026-01-15", -1, "2025-12-15"},
        {"2026-12-31", 1, "2027-01-31"},
        {"2026-12-31", 0, "2026-12-31"},
        {"2026-05-31", 1, "2026-06-30"},
        {"2026-05-31", -18, "2024-11-30"},
        {"2026-11-30", 24, "2028-11-30"},
        {"2026-11", 2, "2027-01"},
        {"2026-01", -1, "2025-12"},
        {"2026", 12, "2027"},
        {"2026", 18, "2027"},
        {"2026", -6, "2025"},
    };
    for (const auto& [from, months, to] : cases) {
        INFO(from << " and " << months << " months");
        CHECK(to_iso(add_months(*parse_iso_date(from), months)) == to);
    }
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
