#include "records/read_price.h"

#include "base/number.h"
#include "base/words.h"
#include "source/values.h"

namespace dyeleaf {

namespace {

// As a price says it, in place of what was written.
void refuse_price(const Node& node, const std::string& text, const Currency& currency, Diagnostics& diagnostics) {
    const std::string example = "write the number alone, such as " + fixed(26, currency.minor_units);
    const std::string shown = in_quotes(shortened(text, 40));
    if (text.starts_with('-')) {
        diagnostics.error(node.spot, "a price of " + shown + " is less than nothing", example);
    } else if (lower_case(text) == "free") {
        diagnostics.error(node.spot, shown + " is not a price",
                          "leave the line out, and the tag keeps an empty price box to write in");
    } else if (const auto number = parse_decimal(text); number && text.find('.') != std::string::npos) {
        diagnostics.error(node.spot, shown + " has more decimals than " + currency.code + " has",
                          "write " + fixed(*number, currency.minor_units));
    } else if (text.find(',') != std::string::npos) {
        diagnostics.error(node.spot, "a comma in the price " + shown,
                          "write a point before the cents and nothing between thousands, as in 1250.50");
    } else {
        diagnostics.error(node.spot, shown + " is not a price", example + "; the currency stands under “studio”");
    }
}

} // namespace

std::optional<Price> read_price(const Node& node, const Currency& currency, Diagnostics& diagnostics) {
    const auto text = read_word(node, "price", diagnostics);
    if (!text) return std::nullopt;
    if (currency.code.empty()) {
        diagnostics.error(node.spot, "a price, but nothing says in which currency",
                          "add “currency: EUR” to the studio");
        return std::nullopt;
    }
    const auto price = parse_price(*text, currency);
    if (!price) {
        refuse_price(node, *text, currency, diagnostics);
        return std::nullopt;
    }
    if (price->minor > 0) return price;
    diagnostics.error(node.spot, "a price of zero",
                      "leave the line out, and the tag keeps an empty price box to write in");
    return std::nullopt;
}

} // namespace dyeleaf
