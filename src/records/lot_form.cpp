#include "records/lot_form.h"

#include "base/words.h"

#include <algorithm>
#include <optional>

namespace dyeleaf {

namespace {

using Kind = LotPiece::Kind;

constexpr std::string_view meanings = "yy or yyyy is the year, mm the month, each n a figure of the number, c a check "
                                      "character; capital letters and dashes stay as they are";

std::optional<Kind> kind_of(char c) {
    switch (c) {
    case 'y': return Kind::year;
    case 'm': return Kind::month;
    case 'n': return Kind::number;
    case 'c': return Kind::check;
    default: break;
    }
    const bool plain = (c >= 'A' && c <= 'Z') || c == '-' || c == '.' || c == '_';
    return plain ? std::optional{Kind::plain} : std::nullopt;
}

std::ptrdiff_t count(const LotForm& form, Kind kind) {
    return std::ranges::count(form, kind, &LotPiece::kind);
}

// Why a piece is none by itself.
std::optional<LotFormFault> fault_of(const LotPiece& piece) {
    const std::size_t length = piece.text.size();
    const std::string shown = in_quotes(piece.text);
    switch (piece.kind) {
    case Kind::year:
        if (length == 2 || length == 4) return std::nullopt;
        return LotFormFault{"the year in a lot code has two figures or four, not " + shown, "write yy or yyyy"};
    case Kind::month:
        if (length == 2) return std::nullopt;
        return LotFormFault{"the month in a lot code has two figures, not " + shown, "write mm"};
    case Kind::check:
        if (length == 1) return std::nullopt;
        return LotFormFault{"a lot code has one check character, not " + shown, "write one c, at the end"};
    case Kind::number:
        if (length <= longest_lot_number) return std::nullopt;
        return LotFormFault{"no studio dyes so many lots as " + shown + " has figures for",
                            "three or four will do: yy-nnn"};
    case Kind::plain: break;
    }
    return std::nullopt;
}

// Why sound pieces do not make a form.
std::optional<LotFormFault> fault_of(const LotForm& form, const std::string& shown) {
    const auto number = std::ranges::find(form, Kind::number, &LotPiece::kind);
    if (number == form.end())
        return LotFormFault{shown + " has no number that counts on", "write an n for each of its figures: yy-nnn"};
    for (const Kind kind : {Kind::number, Kind::year, Kind::month, Kind::check}) {
        if (count(form, kind) > 1)
            return LotFormFault{shown + " says the same thing twice", "each part of a lot code stands once: yy-nnn"};
    }
    if (count(form, Kind::month) > 0 && count(form, Kind::year) == 0)
        return LotFormFault{shown + " has a month without its year", "write the year before it: yymm-nn"};
    if (count(form, Kind::check) > 0 && form.back().kind != Kind::check)
        return LotFormFault{"the check character is not the last in " + shown, "write the c at the end: yy-nnn-c"};
    if (std::next(number) != form.end() && std::next(number)->kind != Kind::plain)
        return LotFormFault{"nothing parts the number from what follows it in " + shown,
                            "it may grow by a figure: write a dash after it, as in yy-nnn-c"};
    return std::nullopt;
}

} // namespace

std::variant<LotForm, LotFormFault> parse_lot_form(std::string_view text) {
    const std::string shown = in_quotes(shortened(text, 40));
    LotForm form;
    for (const char c : text) {
        const auto kind = kind_of(c);
        if (!kind) return LotFormFault{shown + " is not a form for lot codes", std::string{meanings}};
        if (form.empty() || form.back().kind != *kind) form.push_back({*kind, {}});
        form.back().text += c;
    }
    for (const LotPiece& piece : form) {
        if (auto fault = fault_of(piece)) return *std::move(fault);
    }
    if (auto fault = fault_of(form, shown)) return *std::move(fault);
    constexpr std::size_t longest = 20 - longest_lot_number; // of a GS1 batch number, less the most figures
    if (text.size() > longest)
        return LotFormFault{shown + " is too long for a lot code", "short ones are read out without slips: yy-nnn"};
    return form;
}

LotForm usual_lot_form() {
    return {{Kind::year, "yy"}, {Kind::plain, "-"}, {Kind::number, "nnn"}};
}

} // namespace dyeleaf
