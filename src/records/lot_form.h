// How a studio's own lot codes are made up: what of the date they show, and a number that counts on.
#pragma once

#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace dyeleaf {

struct LotPiece {
    enum class Kind { plain, year, month, number, check };
    Kind kind = Kind::plain;
    std::string text; // as the form has it: "-", "yy", "mm", "nnn", "c"
};

// In the order in which they stand. There is one number and at most one of the others; a month has its year; what comes
// after the number does not start with a piece of its own, for the number may grow; a check character is the last.
using LotForm = std::vector<LotPiece>;

// The most figures that a number grows to.
inline constexpr int longest_lot_number = 6;

struct LotFormFault {
    std::string message, help;
};

// "yy-nnn", "Qyymm.nn-c": yy or yyyy is the year, mm the month, a run of n the number with at least so many figures, c
// a check character; capital letters, dots, dashes and underscores stand for themselves.
std::variant<LotForm, LotFormFault> parse_lot_form(std::string_view text);

// The form of most lot codes, for those who have not chosen one: "yy-nnn".
LotForm usual_lot_form();

} // namespace dyeleaf
