#include "records/money.h"

#include "base/words.h"

#include <algorithm>
#include <array>
#include <charconv>

namespace dyeleaf {

namespace {

struct Row {
    std::string_view code;
    int minor_units;
};

// ISO 4217 list one (SIX), as of the public currency-codes data set: those with other than two decimals, and the
// two-decimal currencies in which wool is likely to be sold.
constexpr std::array rows = {
    Row{"BIF", 0}, Row{"CLP", 0}, Row{"DJF", 0}, Row{"GNF", 0}, Row{"ISK", 0}, Row{"JPY", 0}, Row{"KMF", 0},
    Row{"KRW", 0}, Row{"PYG", 0}, Row{"RWF", 0}, Row{"UGX", 0}, Row{"UYI", 0}, Row{"VND", 0}, Row{"VUV", 0},
    Row{"XAF", 0}, Row{"XOF", 0}, Row{"XPF", 0}, Row{"CLF", 4}, Row{"UYW", 4}, Row{"BHD", 3}, Row{"IQD", 3},
    Row{"JOD", 3}, Row{"KWD", 3}, Row{"LYD", 3}, Row{"OMR", 3}, Row{"TND", 3}, Row{"EUR", 2}, Row{"GBP", 2},
    Row{"USD", 2}, Row{"CAD", 2}, Row{"AUD", 2}, Row{"NZD", 2}, Row{"CHF", 2}, Row{"SEK", 2}, Row{"NOK", 2},
    Row{"DKK", 2}, Row{"PLN", 2}, Row{"CZK", 2}, Row{"HUF", 2}, Row{"RON", 2}, Row{"BGN", 2}, Row{"UAH", 2},
    Row{"TRY", 2}, Row{"ILS", 2}, Row{"ZAR", 2}, Row{"ARS", 2}, Row{"BRL", 2}, Row{"MXN", 2}, Row{"PEN", 2},
    Row{"UYU", 2}, Row{"COP", 2}, Row{"INR", 2}, Row{"NPR", 2}, Row{"CNY", 2}, Row{"HKD", 2}, Row{"TWD", 2},
    Row{"SGD", 2}, Row{"THB", 2}, Row{"MYR", 2}, Row{"PHP", 2}, Row{"IDR", 2}, Row{"KES", 2}, Row{"NGN", 2},
    Row{"MAD", 2}, Row{"EGP", 2},
};

} // namespace

std::optional<Currency> find_currency(std::string_view code) {
    const auto row = std::ranges::find(rows, code, &Row::code);
    if (row == rows.end()) return std::nullopt;
    return Currency{std::string{row->code}, row->minor_units};
}

std::vector<std::string> currency_codes() {
    std::vector<std::string> codes;
    for (const Row& row : rows)
        codes.emplace_back(row.code);
    std::ranges::sort(codes);
    return codes;
}

std::optional<Price> parse_price(std::string_view text, const Currency& currency) {
    const std::size_t point = text.find('.');
    const std::string_view whole = text.substr(0, point);
    const std::string_view fraction = point == std::string_view::npos ? std::string_view{} : text.substr(point + 1);
    const auto digits = [](std::string_view part) {
        return part.find_first_not_of("0123456789") == std::string_view::npos;
    };
    if (whole.empty() || whole.size() > 9 || !digits(whole) || !digits(fraction)) return std::nullopt;
    if (point != std::string_view::npos && fraction.empty()) return std::nullopt;
    if (fraction.size() > static_cast<std::size_t>(currency.minor_units)) return std::nullopt;
    std::string minor = std::string{whole} + std::string{fraction};
    minor.append(static_cast<std::size_t>(currency.minor_units) - fraction.size(), '0');
    Price price;
    std::from_chars(minor.data(), minor.data() + minor.size(), price.minor);
    return price;
}

} // namespace dyeleaf
