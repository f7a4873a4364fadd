// Lot codes: the next free one in the studio's form, and slips in those that there are. Any text may be a lot's code;
// only what has the studio's form is taken to mean something.
#pragma once

#include "base/date.h"
#include "records/records.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace dyeleaf {

// What a code says that has the studio's form: "26-117", "26-117-0".
struct LotCode {
    std::string year, month; // as they stand: "26", "11"; empty where the form has none
    int number = 0;
    bool has_check = false;
};

// Nothing where the code has another form. The number may have fewer or more figures than the form, and the check
// character and the mark before it may be left off: codes from before the studio had them still count.
std::optional<LotCode> read_lot_code(const LotForm& form, std::string_view code);

// Requires: a day, and a number from 1. The check character is that of MOD 37,36 over the letters and figures alone.
std::string write_lot_code(const LotForm& form, const Date& day, int number);

// The next free one for a lot begun on `day`: one more than the highest number of that year, or of all where the form
// has no year, so that gaps stay. Numbers are passed over whose check character could be read as another, and whose
// code could be read as that of a lot there is. Nothing when the numbers have run out.
std::optional<std::string> next_lot_code(const LotForm& form, const std::deque<Lot>& lots, const Date& day);

// The code that was meant, where this one has the studio's form but a letter in its number that looks like a figure, or
// another check character than it should; nothing where there is nothing to mend.
std::optional<std::string> mended_lot_code(const LotForm& form, std::string_view code);

// Whether a tired eye takes one for the other: without regard to case, O and Q are like 0, I and L like 1, Z like 2, S
// like 5, G like 6, B like 8, and dots and underscores like dashes.
bool read_alike(std::string_view one, std::string_view other);
// An order of codes in which those that are read alike are neighbours.
bool reads_before(std::string_view one, std::string_view other);

// Whether it can go into a GS1 code: application identifier 10 takes 1 to 20 characters of set 82 (GS1 General
// Specifications, GS1 AI encodable character set 82).
bool fits_gs1(std::string_view code);

} // namespace dyeleaf
