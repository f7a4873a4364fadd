#include "facts/wording.h"

#include "base/number.h"
#include "base/words.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace dyeleaf {

namespace {

constexpr std::string_view no_break = "\u00a0";

constexpr std::array<std::string_view, 12> months{"January",   "February", "March",    "April",
                                                  "May",       "June",     "July",     "August",
                                                  "September", "October",  "November", "December"};

std::string month_name(const Date& date) {
    return std::string{months.at(static_cast<std::size_t>(date.month - 1))};
}

std::string date_with(const Date& date, const std::string& month) {
    std::string text = std::to_string(date.year);
    if (date.month != 0) text = month + " " + text;
    if (date.day != 0) text = std::to_string(date.day) + " " + text;
    return text;
}

std::string with_unit(std::string number, std::string_view unit) {
    return std::move(number).append(no_break).append(unit);
}

struct Symbol {
    std::string_view code;
    std::string_view symbol;
};
// Those that one currency alone is known by; the many dollars and crowns keep their codes.
constexpr std::array symbols{Symbol{"EUR", "€"}, Symbol{"GBP", "£"}, Symbol{"USD", "$"}, Symbol{"JPY", "¥"}};

// 10 000 and above in groups of three, as the SI Brochure has it.
std::string grouped(std::string digits) {
    if (digits.size() < 5) return digits;
    for (std::size_t at = digits.size(); at > 3;) {
        at -= 3;
        digits.insert(at, no_break);
    }
    return digits;
}

std::string amount_words(const Price& price, int minor_units) {
    std::int64_t unit = 1;
    for (int i = 0; i < minor_units; ++i)
        unit *= 10;
    std::string text = grouped(std::to_string(price.minor / unit));
    if (minor_units == 0) return text;
    std::string minor = std::to_string(price.minor % unit);
    minor.insert(0, static_cast<std::size_t>(minor_units) - minor.size(), '0');
    return text + "." + minor;
}

} // namespace

std::string short_date(const Date& date) {
    return date_with(date, date.month == 0 ? "" : month_name(date).substr(0, 3));
}

std::string long_date(const Date& date) {
    return date_with(date, date.month == 0 ? "" : month_name(date));
}

std::string month_date(const Date& date) {
    return short_date(Date{date.year, date.month, 0});
}

std::optional<Date> known_date(const std::optional<RecordedDate>& date) {
    const Date* known = date ? std::get_if<Date>(&*date) : nullptr;
    return known == nullptr ? std::nullopt : std::optional{*known};
}

std::optional<std::string> short_date(const std::optional<RecordedDate>& date) {
    const auto known = known_date(date);
    if (!known) return std::nullopt;
    return short_date(*known);
}

// What she wrote is not rounded: 1.25 % and 1.3 % are two swatches.
std::string percent_words(Percent percent) {
    return with_unit(decimal(percent.number(), 4), "%");
}

std::string strength_words(Percent strength) {
    return with_unit(significant(strength.number(), 2), "%");
}

std::string mass_words(Mass mass) {
    return with_unit(decimal(mass.number(), 3), "g");
}

std::string about(std::string words) {
    return std::string{"≈"}.append(no_break).append(words);
}

std::string volume_words(Volume volume) {
    const double number = volume.number();
    if (number < 0.1) return with_unit(significant(number, 1), "mL");
    return with_unit(decimal(number, number < 10 ? 1 : 0), "mL");
}

std::string length_words(Length length) {
    return with_unit(decimal(length.in_mm(), 2), "mm");
}

std::string ounces_words(double ounces) {
    return with_unit(decimal(ounces, 1), "oz");
}

std::string metres_words(double metres) {
    return with_unit(decimal(metres, 1), "m");
}

std::string yards_words(double yards) {
    return with_unit(decimal(yards, 1), "yd");
}

std::string price_words(const Price& price, const Currency& currency) {
    std::string amount = amount_words(price, currency.minor_units);
    if (currency.code.empty()) return amount;
    const auto symbol = std::ranges::find(symbols, currency.code, &Symbol::code);
    if (symbol == symbols.end()) return with_unit(std::move(amount), currency.code);
    return std::string{symbol->symbol} + amount;
}

std::string parts_words(double parts) {
    return with_unit(decimal(parts, 3), parts == 1 ? "part" : "parts");
}

std::string place_words(int number, int count) {
    return std::to_string(number) + " of " + std::to_string(count);
}

std::string capitalised(std::string text) {
    if (!text.empty() && text.front() >= 'a' && text.front() <= 'z') {
        text.front() = static_cast<char>(text.front() - 'a' + 'A');
    }
    return text;
}

std::string pot_words(int pot) {
    std::string letters;
    for (int rest = pot; rest >= 0; rest = rest / 26 - 1)
        letters.insert(letters.begin(), static_cast<char>('A' + rest % 26));
    return "Pot " + letters;
}

// Small numbers within a sentence stand in words (common practice).
std::string count_words(int count) {
    constexpr std::array<std::string_view, 12> names{"one",   "two",   "three", "four", "five",   "six",
                                                     "seven", "eight", "nine",  "ten",  "eleven", "twelve"};
    const bool small = count >= 1 && count <= static_cast<int>(names.size());
    return small ? std::string{names.at(static_cast<std::size_t>(count - 1))} : std::to_string(count);
}

std::string fibre_words(const Fibre& fibre) {
    return percent_words(fibre.share) + " " + fibre.name;
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

std::string care_words(const std::vector<Care>& care) {
    std::vector<std::string> texts;
    texts.reserve(care.size());
    for (const Care& treatment : care)
        texts.push_back(unbroken(treatment.words)); // lines break only between treatments
    return joined(texts, dot);
}

std::string label_words(const Swatch& swatch, const Base& base) {
    return percent_words(swatch.depth) + " on " + base.name;
}

std::string_view words(HueFamily family) {
    switch (family) {
    case HueFamily::pink: return "pink";
    case HueFamily::red: return "red";
    case HueFamily::orange_brown: return "orange/brown";
    case HueFamily::yellow: return "yellow";
    case HueFamily::green: return "green";
    case HueFamily::turquoise: return "turquoise";
    case HueFamily::blue: return "blue";
    case HueFamily::violet: return "violet";
    case HueFamily::grey: return "grey";
    }
    return {};
}

std::string hue_range_words(HueFamily first, HueFamily last) {
    std::string text = capitalised(std::string{words(first)});
    if (first != last) text += " to " + std::string{words(last)};
    return text;
}

std::string_view words(ColourSource source) {
    switch (source) {
    case ColourSource::instrument: return "instrument";
    case ColourSource::photo: return "from a photo";
    case ColourSource::eye: return "by eye";
    }
    return {};
}

std::string_view words(Basis basis) {
    return basis == Basis::weight ? "by weight" : "by volume";
}

std::string_view words(PutUp put_up) {
    switch (put_up) {
    case PutUp::skein: return "skein";
    case PutUp::mini: return "mini skein";
    case PutUp::cone: return "cone";
    case PutUp::braid: return "braid";
    }
    return {};
}

} // namespace dyeleaf
