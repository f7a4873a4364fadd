#include "records/article_numbers.h"

#include "base/gtin.h"
#include "base/words.h"
#include "records/read_fields.h"

#include <map>
#include <utility>

namespace dyeleaf {

namespace {

auto number_of(Gtin kind) {
    return [kind](const Node& node, const std::string& what,
                  Diagnostics& diagnostics) -> std::optional<Sourced<std::string>> {
        const auto text = read_word(node, what, diagnostics);
        if (!text) return std::nullopt;
        auto number = parse_gtin(*text, kind);
        if (auto* digits = std::get_if<std::string>(&number))
            return Sourced<std::string>{std::move(*digits), node.spot};
        const auto& fault = std::get<GtinFault>(number);
        diagnostics.error(node.spot, fault.message, fault.help);
        return std::nullopt;
    };
}

class Articles {
  public:
    explicit Articles(Diagnostics& diagnostics) : diagnostics_(&diagnostics) {}

    void add(const ArticleNumbers& numbers, const std::string& article) {
        if (numbers.ean) add(numbers.ean->value, *numbers.ean, article);
        // The same article as an EAN has a zero in front.
        if (numbers.upc) add("0" + numbers.upc->value, *numbers.upc, article);
    }

  private:
    void add(const std::string& key, const Sourced<std::string>& number, const std::string& article) {
        const auto [first, is_new] = articles_.emplace(key, article);
        if (is_new || first->second == article) return;
        diagnostics_->warning(number.spot,
                              "the number " + in_quotes(number.value) + " is that of " + first->second + " too",
                              "a till takes one for the other: give " + article + " a number of its own");
    }

    Diagnostics* diagnostics_;
    std::map<std::string, std::string> articles_; // by their 13 digits
};

} // namespace

ArticleNumbers read_article_numbers(Fields& fields) {
    return {optional_field(fields, "ean", number_of(Gtin::ean_13)),
            optional_field(fields, "upc", number_of(Gtin::upc_a))};
}

void warn_of_shared_numbers(const Records& records, Diagnostics& diagnostics) {
    Articles articles{diagnostics};
    for (const Base& base : records.bases)
        articles.add(base.numbers, "the base " + in_quotes(base.id.value));
    for (const Lot& lot : records.lots)
        articles.add(lot.numbers, in_quotes(lot.colourway) + " on " + in_quotes(lot.base.value));
}

} // namespace dyeleaf
