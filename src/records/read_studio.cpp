#include "records/read_items.h"

#include "base/number.h"
#include "base/web_address.h"
#include "records/read_fields.h"
#include "records/read_hazards.h"
#include "records/read_values.h"

#include <algorithm>
#include <utility>

namespace dyeleaf {

namespace {

// One text, or a list of them.
std::optional<std::vector<std::string>> read_contact(const Node& node, const std::string& what,
                                                     Diagnostics& diagnostics) {
    std::vector<std::string> lines;
    const auto add = [&](const Node& one) {
        if (auto line = read_text(one, what, diagnostics)) lines.push_back(std::move(*line));
    };
    if (node.kind == Node::Kind::list) {
        std::ranges::for_each(node.items(), add);
    } else {
        add(node);
    }
    return lines;
}

// Which languages there are is known where the layouts are.
std::optional<Sourced<std::string>> read_language_code(const Node& node, const std::string& what,
                                                       Diagnostics& diagnostics) {
    auto code = read_text(node, what, diagnostics);
    if (!code) return std::nullopt;
    return Sourced<std::string>{*code, node.spot};
}

Currency read_currency(const Node& node, const std::string& what, Diagnostics& diagnostics) {
    const auto code = read_text(node, what, diagnostics);
    if (code) {
        if (auto currency = find_currency(*code)) return *currency;
        const auto close = code->size() > 2 ? nearest(*code, currency_codes()) : std::nullopt;
        diagnostics.error(node.spot, in_quotes(shortened(*code, 40)) + " is not a currency code",
                          (close ? "did you mean " + in_quotes(*close) + "? " : std::string{}) +
                              "write its three letters, such as EUR, GBP or USD");
    }
    return unread_currency();
}

std::optional<LotForm> read_lot_form(const Node& node, const std::string& what, Diagnostics& diagnostics) {
    const auto text = read_word(node, what, diagnostics);
    if (!text) return std::nullopt;
    auto form = parse_lot_form(*text);
    if (auto* sound = std::get_if<LotForm>(&form)) return std::move(*sound);
    const auto& fault = std::get<LotFormFault>(form);
    diagnostics.error(node.spot, fault.message, fault.help);
    return std::nullopt;
}

std::optional<LotLimits> read_lot_limits(const Node& node, const std::string& what, Diagnostics& diagnostics) {
    const std::string example = what + ": {a little: 2, visibly: 5, too much: 10}";
    if (node.kind != Node::Kind::map) {
        diagnostics.error(node.spot, in_quotes(what) + " takes three numbers, each a difference in colour (ΔE00)",
                          "write " + example);
        return std::nullopt;
    }
    const int errors_before = diagnostics.errors();
    Fields fields{node, what, diagnostics};
    const auto difference = within(read_decimal, {0.1, 100.0});
    LotLimits limits;
    limits.a_little = optional_field(fields, "a little", difference).value_or(limits.a_little);
    limits.visibly = optional_field(fields, "visibly", difference).value_or(limits.visibly);
    limits.too_much = optional_field(fields, "too much", difference).value_or(limits.too_much);
    fields.refuse_the_rest();
    if (diagnostics.errors() > errors_before) return std::nullopt;
    if (limits.a_little < limits.visibly && limits.visibly < limits.too_much) return limits;
    diagnostics.error(node.spot,
                      in_quotes(what) + " does not rise: a little " + decimal(limits.a_little, 1) + ", visibly " +
                          decimal(limits.visibly, 1) + ", too much " + decimal(limits.too_much, 1),
                      "a little must be less than visibly, and that less than too much, as in " + example);
    return std::nullopt;
}

// What a lot's id is put behind: it must end where a new part of the address begins.
std::optional<std::string> read_link(const Node& node, const std::string& what, Diagnostics& diagnostics) {
    const auto text = read_word(node, what, diagnostics);
    if (!text) return std::nullopt;
    const bool has_scheme = text->find("://") != std::string::npos;
    const std::string address = has_scheme ? *text : "https://" + *text;
    if (!is_web_address(address)) {
        diagnostics.error(node.spot, in_quotes(shortened(*text, 40)) + " is not a web address",
                          "write the page that your codes shall lead to, as in link: https://quillmoor.example/lot/");
        return std::nullopt;
    }
    if (!has_scheme) {
        diagnostics.error(node.spot, in_quotes(shortened(*text, 40)) + " does not begin with https://",
                          "a phone opens whole addresses only: write link: " + address);
        return std::nullopt;
    }
    const bool has_path = address.find('/', address.find("://") + 3) != std::string::npos;
    if (has_path && std::string_view{"/=?#-_"}.find(address.back()) != std::string_view::npos) return address;
    diagnostics.error(node.spot, in_quotes(shortened(*text, 40)) + " does not end where a lot’s id can follow",
                      "the id is put right behind it: write link: " + address + "/");
    return std::nullopt;
}

} // namespace

Studio read_studio(const Node& node, Diagnostics& diagnostics) {
    const int errors_before = diagnostics.errors();
    Fields fields{node, "studio", diagnostics};
    Studio studio;
    studio.spot = node.spot;
    studio.name = needed_field(fields, "name", "name: Quillmoor Yarn Works", read_name).value_or("");
    studio.tagline = optional_field(fields, "tagline", read_name).value_or("");
    studio.contact = optional_field(fields, "contact", read_contact).value_or(std::vector<std::string>{});
    const auto market =
        one_of<Market>({{"eu", Market::eu}, {"uk", Market::uk}, {"us", Market::us}, {"none", Market::none}});
    studio.market = optional_field(fields, "market", market).value_or(studio.market);
    const auto units = one_of<Units>({{"metric", Units::metric}, {"imperial", Units::imperial}, {"both", Units::both}});
    studio.units = optional_field(fields, "units", units).value_or(studio.units);
    if (const Node* currency = fields.take("currency"))
        studio.currency = read_currency(*currency, "currency", diagnostics);
    const auto step = within(read_mass, {grams(0.0001), grams(100)});
    studio.scale_step = optional_field(fields, "scale step", step).value_or(studio.scale_step);
    studio.unit_price = optional_field(fields, "unit price", read_yes_no).value_or(studio.unit_price);
    studio.made_in = optional_field(fields, "made in", read_name);
    studio.jars_keep = optional_field(fields, "jars keep", read_period);
    const auto styles = one_of<CareStyle>(
        {{"words", CareStyle::words}, {"symbols", CareStyle::symbols}, {"words and symbols", CareStyle::both}});
    studio.care_style = optional_field(fields, "care", styles).value_or(studio.care_style);
    studio.lot_limits = optional_field(fields, "lots differ", read_lot_limits).value_or(studio.lot_limits);
    studio.lot_codes = optional_field(fields, "lot codes", read_lot_form);
    studio.language = optional_field(fields, "language", read_language_code);
    studio.second_language = optional_field(fields, "second language", read_language_code);
    studio.backs = optional_field(fields, "backs", read_backs);
    studio.link = optional_field(fields, "link", read_link);
    const auto resolution = within(read_resolution, {72, 2400});
    if (const auto dots = optional_field(fields, "resolution", resolution)) studio.dot = inches(1) / *dots;
    const std::string first = studio.language ? lower_case(studio.language->value) : "en";
    if (studio.second_language && lower_case(studio.second_language->value) == first) {
        diagnostics.warning(studio.second_language->spot, "the second language is the first one too",
                            "tags would say the same thing twice: write another language, or delete the line");
    }
    studio.logo = optional_field(fields, "logo", read_picture_name);
    fields.refuse_the_rest();
    const bool may_have_been_meant =
        studio.currency.code.empty() && (diagnostics.errors() > errors_before || !node.refused().empty());
    if (may_have_been_meant) studio.currency = unread_currency();
    return studio;
}

Currency unread_currency() {
    return {"?", 4};
}

std::optional<Ingredient> read_ingredient(const Node& node, Diagnostics& diagnostics) {
    Fields fields{node, "ingredient", diagnostics};
    Ingredient ingredient;
    ingredient.spot = node.spot;
    const auto id = needed_field(fields, "id", "id: salt", read_id);
    ingredient.name = needed_field(fields, "name", "name: fine table salt", read_name).value_or("");
    ingredient.bulk_density = optional_field(fields, "bulk density", read_bulk_density);
    ingredient.hazards = optional_field(fields, "hazards", read_hazards);
    ingredient.precautions = optional_field(fields, "precautions", read_precautions);
    fields.refuse_the_rest();
    if (!id) return std::nullopt;
    ingredient.id = *id;
    return ingredient;
}

} // namespace dyeleaf
