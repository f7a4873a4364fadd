// Dates in other forms, and what they mean.
#include "records/guess_dates.h"

#include <catch2/catch.hpp>

using namespace dyeleaf;

namespace {

using Dates = std::vector<std::string>;

} // namespace

TEST_CASE("a date in words has one meaning", "[records]") {
    for (const char* text : {"28 March 2026", "March 28, 2026", "28th of Mar 2026", "28-mar-2026", "2026 March 28"})
        CHECK(guess_dates(text) == Dates{"2026-03-28"});
    CHECK(guess_dates("Sept 2026") == Dates{"2026-09"});
    CHECK(guess_dates("29 February 2024") == Dates{"2024-02-29"});
}

TEST_CASE("a date in figures has one meaning where only one is possible", "[records]") {
    CHECK(guess_dates("21.3.2026") == Dates{"2026-03-21"});
    CHECK(guess_dates("28. 3. 2026") == Dates{"2026-03-28"});
    CHECK(guess_dates("3/28/2026") == Dates{"2026-03-28"});
    CHECK(guess_dates("4/4/2026") == Dates{"2026-04-04"});
    CHECK(guess_dates("2026/11/02") == Dates{"2026-11-02"});
    CHECK(guess_dates("11.2026") == Dates{"2026-11"});
}

TEST_CASE("day and month that could change places have two", "[records]") {
    CHECK(guess_dates("2.11.2026") == Dates{"2026-11-02", "2026-02-11"});
}

TEST_CASE("what is no date, or leaves the century open, has none", "[records]") {
    for (const char* text : {"", "spring 2026", "03/04/05", "28 March", "28 March 26", "31 June 2026", "29.2.2023",
                             "ca. 2026", "32.13.2026", "12 March 13 2026", "unknown"})
        CHECK(guess_dates(text).empty());
}
