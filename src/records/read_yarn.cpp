#include "records/read_items.h"

#include "base/number.h"
#include "base/plain_figures.h"
#include "records/article_numbers.h"
#include "records/fibre_shares.h"
#include "records/read_fields.h"
#include "records/read_price.h"
#include "records/read_recipe.h"
#include "records/read_skein.h"
#include "records/read_values.h"
#include "records/suggest_care.h"

#include <algorithm>
#include <numeric>

namespace dyeleaf {

namespace {

// "wool 34 %, silk 33 %"
std::string shares_of(const std::vector<Fibre>& fibres) {
    std::vector<std::string> words;
    for (const Fibre& fibre : fibres)
        words.push_back(fibre.name + " " + plain(fibre.share));
    return joined(words, ", ");
}

void make_whole(std::vector<Fibre>& fibres, const Node& node, Diagnostics& diagnostics) {
    std::vector<Percent> shares;
    for (const Fibre& fibre : fibres)
        shares.push_back(fibre.share);
    if (are_whole(shares)) return;
    const double sum = std::accumulate(shares.begin(), shares.end(), Percent{}).number();
    const std::string complaint = "the fibres add up to " + decimal(sum, 3) + " %, not to 100 %";
    const auto mended = made_whole(shares);
    if (!mended) {
        const std::string few = fibres.size() == 1 ? "; if another fibre is in it, name that too" : "";
        diagnostics.error(node.spot, complaint,
                          "write the shares that the mill gives, so that they make 100 % together" + few);
        return;
    }
    for (std::size_t i = 0; i < fibres.size(); ++i)
        fibres[i].share = mended->at(i);
    diagnostics.warning(node.spot, complaint,
                        "they are taken as " + shares_of(fibres) +
                            "; write these figures, or better ones if the mill gives them");
}

std::vector<Fibre> read_fibres(const Node& node, Diagnostics& diagnostics) {
    if (node.kind != Node::Kind::map || (node.entries().empty() && node.refused().empty())) {
        const bool text = node.kind == Node::Kind::scalar;
        diagnostics.error(node.spot,
                          (text ? in_quotes(shortened(trimmed(node.text), 40)) : std::string{"this"}) +
                              " does not give each fibre its share",
                          "write fibre: {wool: 75 %, polyamide: 25 %}, one share for each");
        return {};
    }
    const int errors_before = diagnostics.errors();
    std::vector<Fibre> fibres;
    for (const Entry& entry : node.entries()) {
        if (entry.value.kind == Node::Kind::nothing) {
            diagnostics.error(entry.key_spot, "nothing stands after " + in_quotes(entry.key),
                              "write its share, as in " + entry.key + ": 75 %");
            continue;
        }
        const auto share =
            read_percent(entry.value, "share of " + entry.key, {percent(0.01), percent(100)}, diagnostics);
        if (share) fibres.push_back({entry.key, *share, entry.key_spot});
    }
    if (diagnostics.errors() == errors_before && node.refused().empty()) make_whole(fibres, node, diagnostics);
    return fibres;
}

// `yes`, `no`, or the share of the yarn that is superwash wool.
std::optional<Superwash> read_superwash(const Node& node, const std::string& what, Diagnostics& diagnostics) {
    const std::string_view text = trimmed(node.text);
    if (text.find_first_of("0123456789%") != std::string_view::npos) {
        const auto share = read_percent(node, what, {percent(0.01), percent(100)}, diagnostics);
        return share ? std::optional<Superwash>{*share} : std::nullopt;
    }
    const auto answer = read_yes_no(node, what, diagnostics);
    return answer ? std::optional<Superwash>{*answer} : std::nullopt;
}

std::optional<Care> read_treatment(const Node& node, Diagnostics& diagnostics) {
    const auto text = read_word(node, "care", diagnostics);
    if (!text) return std::nullopt;
    const auto care = find_care(*text);
    if (!care) {
        diagnostics.error(node.spot, in_quotes(shortened(*text, 40)) + " is not a care treatment known here",
                          suggest_care(*text));
    }
    return care;
}

std::optional<std::vector<Care>> read_care(const Node& node, const std::string& what, Diagnostics& diagnostics) {
    std::vector<Care> treatments;
    for (const Node& one : read_list(node, what, "care: [wash 30 gentle, no bleach, dry flat]", diagnostics)) {
        const auto care = read_treatment(one, diagnostics);
        if (!care) continue;
        const auto rival =
            std::ranges::find_if(treatments, [&](const Care& other) { return contradict(other, *care); });
        if (rival == treatments.end()) {
            treatments.push_back(*care);
        } else if (rival->key == care->key) {
            diagnostics.warning(one.spot, in_quotes(care->key) + " stands in this list twice", "keep one of the two");
        } else {
            diagnostics.error(one.spot,
                              in_quotes(care->key) + " and " + in_quotes(rival->key) + " cannot both be right",
                              "keep the one that the mill's data or your own test gives");
        }
    }
    return treatments;
}

std::vector<int> read_numbers(const Node& node, const std::string& what, const std::string& example, Range<int> range,
                              Diagnostics& diagnostics) {
    std::vector<int> numbers;
    for (const Node& one : read_list(node, what, example, diagnostics)) {
        if (const auto number = read_whole(one, what, range, diagnostics)) numbers.push_back(*number);
    }
    return numbers;
}

std::vector<int> read_pots(const Node& node, int skeins, Diagnostics& diagnostics) {
    const int errors_before = diagnostics.errors();
    auto pots = read_numbers(node, "pots", "pots: [4, 4, 4]", {1, 1000}, diagnostics);
    const int sum = std::accumulate(pots.begin(), pots.end(), 0);
    if (diagnostics.errors() == errors_before && skeins > 0 && sum != skeins) {
        diagnostics.error(node.spot,
                          "the pots hold " + counted(sum, "skein", "skeins") + ", but the lot has " +
                              std::to_string(skeins),
                          "one number for each pot, adding up to the skeins");
    }
    return pots;
}

std::vector<int> read_spoilt(const Node& node, int skeins, Diagnostics& diagnostics) {
    std::vector<int> spoilt;
    const int most = skeins > 0 ? skeins : 1000;
    for (const Node& one : read_list(node, "spoilt", "spoilt: [7]", diagnostics)) {
        const auto number = read_whole(one, "spoilt", {1, 1000}, diagnostics);
        if (!number) continue;
        if (*number > most) {
            diagnostics.error(one.spot,
                              "there is no skein " + std::to_string(*number) + " in a lot of " + std::to_string(skeins),
                              "give the numbers of the spoilt skeins, from 1 to " + std::to_string(skeins));
        } else if (std::ranges::find(spoilt, *number) != spoilt.end()) {
            diagnostics.error(one.spot, "skein " + std::to_string(*number) + " is spoilt twice", "name it once");
        } else {
            spoilt.push_back(*number);
        }
    }
    return spoilt;
}

std::vector<Id> read_references(const Node& node, const std::string& what, const std::string& example,
                                Diagnostics& diagnostics) {
    std::vector<Id> ids;
    for (const Node& one : read_list(node, what, example, diagnostics)) {
        if (auto id = read_reference(one, what, diagnostics)) ids.push_back(std::move(*id));
    }
    return ids;
}

} // namespace

std::optional<Base> read_base(const Node& node, Diagnostics& diagnostics) {
    Fields fields{node, "base", diagnostics};
    Base base;
    base.spot = base.care_spot = node.spot;
    const auto id = needed_field(fields, "id", "id: plain-sock", read_id);
    base.name = needed_field(fields, "name", "name: Plain Sock", read_name).value_or("");
    const auto code = optional_field(fields, "code", read_name);
    if (const Node* fibre = fields.need("fibre", "fibre: {wool: 75 %, polyamide: 25 %}"))
        base.fibres = read_fibres(*fibre, diagnostics);
    if (const Node* skein = fields.need("skein", "skein: {weight: 100 g, length: 420 m}"))
        base.skein = read_skein(*skein, diagnostics);
    const auto put_ups =
        one_of<PutUp>({{"skein", PutUp::skein}, {"mini", PutUp::mini}, {"cone", PutUp::cone}, {"braid", PutUp::braid}});
    base.put_up = optional_field(fields, "put up", put_ups).value_or(base.put_up);
    base.yarn_weight = optional_field(fields, "yarn weight", read_name);
    base.gauge = optional_field(fields, "gauge", read_name);
    base.needles = optional_field(fields, "needles", read_name);
    base.origin = optional_field(fields, "origin", read_name);
    base.names_breed = optional_field(fields, "name the breed", read_yes_no);
    base.virgin_wool = optional_field(fields, "virgin wool", read_yes_no);
    base.superwash = optional_field(fields, "superwash", read_superwash);
    const auto spinnings = one_of<Spinning>({{"combed", Spinning::combed}, {"carded", Spinning::carded}});
    base.spinning = optional_field(fields, "spun", spinnings);
    base.care = optional_field(fields, "care", read_care).value_or(std::vector<Care>{});
    if (const Node* care = fields.take("care")) base.care_spot = care->spot;
    const auto sources = one_of<CareSource>({{"mill", CareSource::mill}, {"own test", CareSource::own_test}});
    base.care_source = optional_field(fields, "care from", sources);
    base.colour = optional_field(fields, "colour", read_colour);
    base.notes = optional_field(fields, "notes", read_notes);
    base.numbers = read_article_numbers(fields);
    fields.ignore("private notes");
    fields.refuse_the_rest();
    if (!id) return std::nullopt;
    base.id = *id;
    base.code = code.value_or(id->value);
    return base;
}

std::optional<Lot> read_lot(const Node& node, const Currency& currency, Diagnostics& diagnostics) {
    Fields fields{node, "lot", diagnostics};
    Lot lot;
    lot.spot = node.spot;
    const auto id = needed_field(fields, "id", "id: \"26-117\"", read_id);
    lot.colourway = needed_field(fields, "colourway", "colourway: Hedge in October", read_name).value_or("");
    const auto base = needed_field(fields, "base", "base: plain-sock", read_reference);
    lot.skeins = needed_field(fields, "skeins", "skeins: 12", within(read_whole, {1, 1000})).value_or(0);
    if (const Node* pots = fields.take("pots")) lot.pots = read_pots(*pots, lot.skeins, diagnostics);
    if (const Node* spoilt = fields.take("spoilt")) lot.spoilt = read_spoilt(*spoilt, lot.skeins, diagnostics);
    lot.skein_mass = optional_field(fields, "skein weight", read_skein_mass);
    if (const Node* odd = fields.take("odd skeins")) lot.odd_skeins = read_odd_skeins(*odd, lot, currency, diagnostics);
    lot.dyed = optional_field(fields, "dyed", read_date);
    if (const Node* price = fields.take("price")) lot.price = read_price(*price, currency, diagnostics);
    lot.colour = optional_field(fields, "colour", read_colour);
    lot.colour_source = read_colour_source(fields, lot.colour);
    if (const Node* dyes = fields.take("dyes"))
        lot.dyes = read_references(*dyes, "dyes", "dyes: [sloe, haw]", diagnostics);
    lot.recipe = read_recipe(fields);
    lot.alternate = optional_field(fields, "alternate", read_yes_no);
    lot.picture = optional_field(fields, "picture", read_picture_name);
    lot.notes = optional_field(fields, "notes", read_notes);
    lot.numbers = read_article_numbers(fields);
    fields.ignore("customer");
    fields.ignore("private notes");
    fields.refuse_the_rest();
    if (!id) return std::nullopt;
    lot.id = *id;
    if (base) lot.base = *base;
    return lot;
}

} // namespace dyeleaf
