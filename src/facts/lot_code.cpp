#include "facts/lot_code.h"

#include "base/number.h"
#include "facts/check_character.h"

#include <algorithm>
#include <array>
#include <fmt/format.h>
#include <utility>

namespace dyeleaf {

namespace {

using Kind = LotPiece::Kind;

bool is_figure(char c) {
    return c >= '0' && c <= '9';
}

char upper(char c) {
    return c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c;
}

bool is_figure_or_letter(char c) {
    return is_figure(c) || (upper(c) >= 'A' && upper(c) <= 'Z');
}

// Letters that are read as figures (common practice).
constexpr std::array<std::pair<char, char>, 8> look_alikes = {
    {{'O', '0'}, {'Q', '0'}, {'I', '1'}, {'L', '1'}, {'Z', '2'}, {'S', '5'}, {'G', '6'}, {'B', '8'}}};

// The character itself where it is like no figure.
char figure_like(char c) {
    const auto* like = std::ranges::find(look_alikes, upper(c), &std::pair<char, char>::first);
    return like == look_alikes.end() ? c : like->second;
}

char as_read(char c) {
    return c == '.' || c == '_' ? '-' : figure_like(upper(c));
}

// The check character of what stands before it.
char check_of(std::string_view code) {
    std::string characters;
    for (const char c : code) {
        if (is_figure_or_letter(c)) characters += upper(c);
    }
    return check_character(CheckSystem::mod_37_36, characters).value_or('0');
}

// A code taken apart by its form: a text for each piece, fewer where the check is left off.
using Pieces = std::vector<std::string>;

std::size_t figures_at(std::string_view text, bool leniently) {
    std::size_t length = 0;
    while (length < text.size() && is_figure(leniently ? figure_like(text[length]) : text[length]))
        ++length;
    return length;
}

// How much of the text the piece takes; 0 where it does not fit.
std::size_t taken_by(const LotPiece& piece, std::string_view text, bool leniently) {
    const std::size_t length = piece.text.size();
    switch (piece.kind) {
    case Kind::plain: return text.starts_with(piece.text) ? length : 0;
    case Kind::check: return text.size() == 1 && is_figure_or_letter(text.front()) ? 1 : 0;
    case Kind::number: {
        const std::size_t figures = figures_at(text, leniently);
        const bool is_word = std::ranges::none_of(text.substr(0, figures), is_figure); // "SOLO" is no number
        return !is_word && figures <= static_cast<std::size_t>(longest_lot_number) ? figures : 0;
    }
    case Kind::year:
    case Kind::month: break;
    }
    return figures_at(text.substr(0, length), false) == length ? length : 0;
}

// `leniently`: letters in the number that look like figures are taken for them.
std::optional<Pieces> take_apart(const LotForm& form, std::string_view code, bool leniently) {
    Pieces parts;
    for (std::size_t i = 0; i < form.size(); ++i) {
        const bool check_left_off =
            code.empty() && form.back().kind == Kind::check && i > 0 && form[i - 1].kind == Kind::number;
        if (check_left_off) return parts;
        const std::size_t taken = taken_by(form[i], code, leniently);
        if (taken == 0) return std::nullopt;
        std::string part{code.substr(0, taken)};
        if (form[i].kind == Kind::number) std::ranges::transform(part, part.begin(), figure_like);
        parts.push_back(std::move(part));
        code.remove_prefix(taken);
    }
    return code.empty() ? std::optional{parts} : std::nullopt;
}

std::string year_of(const LotPiece& piece, const Date& day) {
    const std::string year = fmt::format("{:04}", day.year);
    return piece.text.size() == 2 ? year.substr(2) : year;
}

// The year as codes of this form show it; empty where they do not.
std::string year_shown(const LotForm& form, const Date& day) {
    const auto year = std::ranges::find(form, Kind::year, &LotPiece::kind);
    return year == form.end() ? std::string{} : year_of(*year, day);
}

} // namespace

std::optional<LotCode> read_lot_code(const LotForm& form, std::string_view code) {
    const auto parts = take_apart(form, code, false);
    if (!parts) return std::nullopt;
    LotCode result;
    for (std::size_t i = 0; i < parts->size(); ++i) {
        const std::string& part = (*parts)[i];
        if (form[i].kind == Kind::year) result.year = part;
        if (form[i].kind == Kind::month) result.month = part;
        if (form[i].kind == Kind::number) result.number = parse_whole(part).value_or(0);
        if (form[i].kind == Kind::check) result.has_check = true;
    }
    return result;
}

std::string write_lot_code(const LotForm& form, const Date& day, int number) {
    std::string code;
    for (const LotPiece& piece : form) {
        switch (piece.kind) {
        case Kind::plain: code += piece.text; break;
        case Kind::year: code += year_of(piece, day); break;
        case Kind::month: code += fmt::format("{:02}", day.month); break;
        case Kind::number: code += fmt::format("{:0{}}", number, piece.text.size()); break;
        case Kind::check: code += check_of(code); break;
        }
    }
    return code;
}

std::optional<std::string> next_lot_code(const LotForm& form, const std::deque<Lot>& lots, const Date& day) {
    const std::string year = year_shown(form, day);
    const bool checked = form.back().kind == Kind::check;
    int highest = 0;
    for (const Lot& lot : lots) {
        const auto code = read_lot_code(form, lot.id.value);
        if (code && code->year == year) highest = std::max(highest, code->number);
    }
    constexpr int last = 999'999; // longest_lot_number figures
    for (int number = highest + 1; number <= last; ++number) {
        std::string code = write_lot_code(form, day, number);
        const bool clear = !checked || figure_like(code.back()) == code.back();
        const auto is_like = [&](const Lot& lot) { return read_alike(lot.id.value, code); };
        if (clear && std::ranges::none_of(lots, is_like)) return code;
    }
    return std::nullopt;
}

std::optional<std::string> mended_lot_code(const LotForm& form, std::string_view code) {
    const auto parts = take_apart(form, code, true);
    if (!parts) return std::nullopt;
    std::string mended;
    for (std::size_t i = 0; i < parts->size(); ++i) {
        const std::string& part = (*parts)[i];
        // Shorter than this studio writes them: from elsewhere.
        if (form[i].kind == Kind::number && part.size() < form[i].text.size()) return std::nullopt;
        if (form[i].kind != Kind::check) {
            mended += part;
            continue;
        }
        const char check = check_of(mended);
        mended += upper(part.front()) == check ? part.front() : check;
    }
    return mended == code ? std::nullopt : std::optional{mended};
}

bool read_alike(std::string_view one, std::string_view other) {
    return std::ranges::equal(one, other, {}, as_read, as_read);
}

bool reads_before(std::string_view one, std::string_view other) {
    return std::ranges::lexicographical_compare(one, other, {}, as_read, as_read);
}

bool fits_gs1(std::string_view code) {
    constexpr std::string_view set_82 =
        "!\"%&'()*+,-./0123456789:;<=>?ABCDEFGHIJKLMNOPQRSTUVWXYZ_abcdefghijklmnopqrstuvwxyz";
    return !code.empty() && code.size() <= 20 && code.find_first_not_of(set_82) == std::string_view::npos;
}

} // namespace dyeleaf
