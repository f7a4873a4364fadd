#include "base/gtin.h"

#include "base/words.h"

#include <algorithm>

namespace dyeleaf {

namespace {

bool is_digit(char c) {
    return c >= '0' && c <= '9';
}

std::string_view name_of(Gtin kind) {
    return kind == Gtin::ean_13 ? "EAN-13" : "UPC-A";
}

std::size_t digits_of(Gtin kind) {
    return kind == Gtin::ean_13 ? 13 : 12;
}

bool ends_rightly(std::string_view digits) {
    return digits.back() == gtin_check_digit(digits.substr(0, digits.size() - 1));
}

// What a number of another length may be.
std::string guess(const std::string& digits, Gtin kind) {
    const std::size_t wanted = digits_of(kind);
    if (kind == Gtin::ean_13 && digits.size() == 12 && ends_rightly(digits))
        return "it is a sound UPC-A: write it as upc: \"" + digits + "\", or with a 0 before it as ean: \"0" + digits +
               "\"";
    if (digits.size() + 1 == wanted)
        return "if the last one is missing, which checks the others, it is " + std::string{gtin_check_digit(digits)} +
               ": \"" + digits + gtin_check_digit(digits) + "\"";
    if (kind == Gtin::upc_a && digits.size() == 13 && ends_rightly(digits))
        return digits.front() == '0' ? "it is a sound EAN-13: as UPC-A, write \"" + digits.substr(1) + "\""
                                     : "it is a sound EAN-13: write it as ean: \"" + digits + "\"";
    return "copy all " + std::to_string(wanted) + " digits from under the bars, or from the list of your numbers";
}

} // namespace

char gtin_check_digit(std::string_view digits) {
    int sum = 0;
    int weight = 3;
    for (auto digit = digits.rbegin(); digit != digits.rend(); ++digit) {
        sum += weight * (*digit - '0');
        weight = 4 - weight;
    }
    return static_cast<char>('0' + (10 - sum % 10) % 10);
}

std::variant<std::string, GtinFault> parse_gtin(std::string_view text, Gtin kind) {
    std::string digits{text};
    std::erase(digits, ' ');
    const std::string quoted = in_quotes(shortened(text, 40));
    const std::string name{name_of(kind)};
    if (digits.empty() || !std::ranges::all_of(digits, is_digit)) {
        return GtinFault{quoted + " is not " + (kind == Gtin::ean_13 ? "an " : "a ") + name,
                         "write its " + std::to_string(digits_of(kind)) + " digits and nothing else"};
    }
    if (digits.size() != digits_of(kind)) {
        return GtinFault{quoted + " has " + counted(static_cast<int>(digits.size()), "digit", "digits") + ", and " +
                             (kind == Gtin::ean_13 ? "an " : "a ") + name + " has " + std::to_string(digits_of(kind)),
                         guess(digits, kind)};
    }
    if (ends_rightly(digits)) return digits;
    const std::string others = digits.substr(0, digits.size() - 1);
    const char right = gtin_check_digit(others);
    return GtinFault{"the last digit of " + quoted + " checks the others, and does not fit them",
                     "it would be " + std::string{right} + ", as in \"" + others + right +
                         "\"; compare every digit first, for the slip may be in any of them"};
}

} // namespace dyeleaf
