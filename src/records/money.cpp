#include "records/money.h"

#include <algorithm>
#include <array>
#include <charconv>

namespace dyeleaf {

namespace {

struct Group {
    int minor_units;
    std::string_view codes; // three letters and a space each
};

// Every active code of ISO 4217, list one (SIX), as the public data set datasets/currency-codes had it in 2025 and, but
// for the newer XCG and ZWG, Debian's iso-codes 4.15; without those that have no minor units, such as gold. BGN, which
// gave way to EUR in 2026 (from memory), stays for older records.
constexpr std::array groups = {
    Group{0, "BIF CLP DJF GNF ISK JPY KMF KRW PYG RWF UGX UYI VND VUV XAF XOF XPF"},
    Group{2, "AED AFN ALL AMD AOA ARS AUD AWG AZN BAM BBD BDT BGN BMD BND BOB BOV BRL BSD BTN BWP BYN BZD CAD CDF CHE "
             "CHF CHW CNY COP COU CRC CUP CVE CZK DKK DOP DZD EGP ERN ETB EUR FJD FKP GBP GEL GHS GIP GMD GTQ GYD HKD "
             "HNL HTG HUF IDR ILS INR IRR JMD KES KGS KHR KPW KYD KZT LAK LBP LKR LRD LSL MAD MDL MGA MKD MMK MNT MOP "
             "MRU MUR MVR MWK MXN MXV MYR MZN NAD NGN NIO NOK NPR NZD PAB PEN PGK PHP PKR PLN QAR RON RSD RUB SAR SBD "
             "SCR SDG SEK SGD SHP SLE SOS SRD SSP STN SVC SYP SZL THB TJS TMT TOP TRY TTD TWD TZS UAH USD USN UYU UZS "
             "VED VES WST XCD XCG YER ZAR ZMW ZWG"},
    Group{3, "BHD IQD JOD KWD LYD OMR TND"},
    Group{4, "CLF UYW"},
};

} // namespace

std::optional<Currency> find_currency(std::string_view code) {
    if (code.size() != 3 || code.find(' ') != std::string_view::npos) return std::nullopt;
    for (const Group& group : groups) {
        if (group.codes.find(code) != std::string_view::npos) return Currency{std::string{code}, group.minor_units};
    }
    return std::nullopt;
}

std::vector<std::string> currency_codes() {
    std::vector<std::string> codes;
    for (const Group& group : groups) {
        for (std::size_t at = 0; at < group.codes.size(); at += 4)
            codes.emplace_back(group.codes.substr(at, 3));
    }
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
