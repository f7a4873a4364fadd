#include "facts/wording.h"

#include "base/number.h"
#include "base/words.h"
#include "facts/rounding.h"

#include <algorithm>
#include <array>

namespace dyeleaf {

namespace {

constexpr std::string_view no_break = "\u00a0";

std::string month_name(const Language& language, std::string_view list, const Date& date) {
    return language.say(std::string{list} + "." + std::to_string(date.month));
}

std::string date_with(const Language& language, const Date& date, std::string_view months) {
    std::string year = std::to_string(date.year);
    if (date.month == 0) return year;
    const std::string month = month_name(language, months, date);
    if (date.day == 0) return language.say("dates.month", {{"month", month}, {"year", year}});
    const std::string day = date.day == 1 ? language.say("dates.first") : std::to_string(date.day);
    return language.say("dates.day", {{"day", day}, {"month", month}, {"year", year}});
}

std::string with_unit(std::string number, std::string_view unit) {
    return std::move(number).append(no_break).append(unit);
}

struct CurrencySign {
    std::string_view code;
    std::string_view symbol;
};
// Those that one currency alone is known by; the many dollars and crowns keep their codes.
constexpr std::array symbols{CurrencySign{"EUR", "€"}, CurrencySign{"GBP", "£"}, CurrencySign{"USD", "$"},
                             CurrencySign{"JPY", "¥"}};

// 10 000 and above in groups of three, as the SI Brochure has it.
std::string grouped(std::string digits) {
    if (digits.size() < 5) return digits;
    for (std::size_t at = digits.size(); at > 3;) {
        at -= 3;
        digits.insert(at, no_break);
    }
    return digits;
}

std::string amount_words(const Language& language, const Price& price, int minor_units) {
    std::int64_t unit = 1;
    for (int i = 0; i < minor_units; ++i)
        unit *= 10;
    std::string text = grouped(std::to_string(price.minor / unit));
    if (minor_units == 0) return text;
    std::string minor = std::to_string(price.minor % unit);
    minor.insert(0, static_cast<std::size_t>(minor_units) - minor.size(), '0');
    return text + language.say("numbers.decimal mark") + minor;
}

} // namespace

std::string short_date(const Language& language, const Date& date) {
    return date_with(language, date, "dates.short months");
}

std::string long_date(const Language& language, const Date& date) {
    return date_with(language, date, "dates.months");
}

std::string month_date(const Language& language, const Date& date) {
    return short_date(language, Date{date.year, date.month, 0});
}

std::optional<Date> known_date(const std::optional<RecordedDate>& date) {
    const Date* known = date ? std::get_if<Date>(&*date) : nullptr;
    return known == nullptr ? std::nullopt : std::optional{*known};
}

std::optional<std::string> short_date(const Language& language, const std::optional<RecordedDate>& date) {
    const auto known = known_date(date);
    if (!known) return std::nullopt;
    return short_date(language, *known);
}

// What she wrote is not rounded: 1.25 % and 1.3 % are two swatches.
std::string percent_words(const Language& language, Percent percent) {
    return with_unit(language.number(percent.number(), 4), "%");
}

std::string strength_words(const Language& language, Percent strength) {
    int figures = strength_figures;
    std::string figure = significant(strength.number(), figures);
    // Only what is all of it is 100 %.
    while (figure == "100" && strength < percent(100) - percent(1e-9) && figures < most_strength_figures)
        figure = significant(strength.number(), ++figures);
    return with_unit(language.number(figure), "%");
}

std::string allowance_words(const Language& language, Percent allowance) {
    return with_unit(language.number(allowance.number(), 2), "%");
}

std::string mass_words(const Language& language, Mass mass) {
    return with_unit(language.number(mass.number(), 3), "g");
}

std::string about_if(bool estimated, std::string words) {
    return estimated ? std::string{"≈"}.append(no_break).append(words) : words;
}

std::string volume_words(const Language& language, Volume volume) {
    const double number = volume.number();
    if (number < 0.1) return with_unit(language.number(significant(number, 1)), "mL");
    return with_unit(language.number(number, number < 10 ? 1 : 0), "mL");
}

std::string length_words(const Language& language, Length length) {
    return with_unit(language.number(length.in_mm(), 2), "mm");
}

std::string ounces_words(const Language& language, double ounces) {
    return with_unit(language.number(ounces, 1), "oz");
}

std::string metres_words(const Language& language, double metres) {
    return with_unit(language.number(metres, 1), "m");
}

std::string yards_words(const Language& language, double yards) {
    return with_unit(language.number(yards, 1), "yd");
}

std::string price_words(const Language& language, const Price& price, const Currency& currency) {
    std::string amount = amount_words(language, price, currency.minor_units);
    if (currency.code.empty()) return amount;
    const auto symbol = std::ranges::find(symbols, currency.code, &CurrencySign::code);
    if (symbol == symbols.end())
        return unbroken(language.say("price.code", {{"amount", amount}, {"code", currency.code}}));
    return unbroken(language.say("price.symbol", {{"amount", amount}, {"symbol", symbol->symbol}}));
}

std::string parts_words(const Language& language, double parts) {
    return with_unit(language.number(parts, 3), language.say(parts == 1 ? "numbers.part" : "numbers.parts"));
}

std::string place_words(const Language& language, int number, int count) {
    return language.say("numbers.place", {{"number", std::to_string(number)}, {"count", std::to_string(count)}});
}

std::string capitalised(std::string text) {
    const auto lower = [&](std::size_t at, char from, char to) {
        return at < text.size() && text[at] >= from && text[at] <= to;
    };
    // Small and capital letters lie 32 apart, among the accented ones of Latin-1 too (two bytes in UTF-8).
    const std::size_t at = text.starts_with('\xc3') ? 1 : 0;
    if (at == 0 ? lower(at, 'a', 'z') : lower(at, '\xa0', '\xbe')) text[at] = static_cast<char>(text[at] - 32);
    return text;
}

std::string pot_letters(int pot) {
    std::string letters;
    for (int rest = pot; rest >= 0; rest = rest / 26 - 1)
        letters.insert(letters.begin(), static_cast<char>('A' + rest % 26));
    return letters;
}

std::string pot_words(const Language& language, int pot) {
    return language.say("yarn.pot", {{"letters", pot_letters(pot)}});
}

// Small numbers within a sentence stand in words (common practice).
std::string count_words(const Language& language, int count) {
    const std::string figure = std::to_string(count);
    const std::string key = "numbers.counts." + figure;
    return language.has(key) ? language.say(key) : figure;
}

std::optional<std::string> only_if(const Language& language, bool says_so, std::string_view key) {
    if (!says_so) return std::nullopt;
    return language.say(key);
}

std::string joined_once(const std::vector<std::string>& texts) {
    std::vector<std::string> once;
    for (const std::string& text : texts)
        add_once(once, text);
    return joined(once, " + ");
}

std::string unbroken(std::string_view text) {
    std::string result;
    for (const char c : text) {
        if (c == ' ') {
            result += no_break;
        } else {
            result += c;
        }
    }
    return result;
}

} // namespace dyeleaf
