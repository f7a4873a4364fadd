#include "facts/yarn_facts.h"

#include "facts/care_proposal.h"
#include "facts/date_rows.h"
#include "facts/fibre_statement.h"
#include "facts/moisture.h"
#include "facts/pots.h"
#include "facts/put_up_facts.h"
#include "facts/recipe.h"
#include "facts/rounding.h"
#include "facts/rows.h"
#include "facts/skein_numbers.h"
#include "facts/skein_size.h"
#include "facts/swatches.h"
#include "facts/wording.h"
#include "facts/yarn.h"
#include "facts/yarn_measure_facts.h"
#include "facts/yarn_wording.h"

#include <algorithm>
#include <functional>

namespace dyeleaf {

namespace {

using Text = std::optional<std::string>;

Text only_if(bool says_so, const Manner& manner, std::string_view key) {
    if (!says_so) return std::nullopt;
    return manner.language.say(key);
}

// --- bases ---

const Vocabulary& fibre_vocabulary() {
    using Row = Rows<StatedFibre>;
    static const Vocabulary vocabulary{
        "fibre",
        {
            Row::text(
                "fibre.name", "its name",
                [](const StatedFibre& fibre, const Manner& m) { return fibre_name_words(m.language, fibre); },
                fibres_by_market()),
            Row::text("fibre.share", "its share of the yarn",
                      [](const StatedFibre& fibre, const Manner& m) { return percent_words(m.language, fibre.share); },
                      {"%", "as recorded; what is one fibre to the market added up", ""}),
        }};
    return vocabulary;
}

const Vocabulary& care_vocabulary() {
    using Row = Rows<Care>;
    static const Vocabulary vocabulary{
        "treatment",
        {
            Row::text("care.words", "what to do, in words",
                      [](const Care& care, const Manner& m) { return care_words(m.language, care); }),
            Row::symbol("care.symbol", "its symbol",
                        [](const Care& care, const Manner& m) {
                            return Symbol{"care/" + std::string{care.key}, care_words(m.language, care)};
                        },
                        {"", "drawn for the recorded treatment", "ISO 3758:2023"}),
        }};
    return vocabulary;
}

std::vector<Care> care_in_order(const BaseView& view) {
    return in_process_order(view.base->care);
}

// What the studio wants on its tags is asked for once, here.
std::vector<Care> care_if(const BaseView& view, CareStyle unwanted) {
    return view.records->studio.care_style == unwanted ? std::vector<Care>{} : care_in_order(view);
}

Text regain(const BaseView& view, const Manner& m) {
    const auto allowance = agreed_allowance(*view.base);
    if (!allowance) return std::nullopt;
    return allowance_words(m.language, *allowance);
}

Text dry_weight(const BaseView& view, const Manner& m) {
    const auto allowance = agreed_allowance(*view.base);
    if (!allowance) return std::nullopt;
    return mass_words(m.language, rounded_to(dry_mass(view.base->skein.mass.value, *allowance), grams(0.1)));
}

Text proposed(const BaseView& view, const Manner& m) {
    const auto proposal = proposed_care(*view.base);
    if (!proposal) return std::nullopt;
    return care_words(m.language, proposal->care);
}

// --- lots ---

const Derivation of_its_dyes{"", "as recorded for the dyes used in it", ""};

std::optional<Price> price_of(const LotView& view) {
    return view.lot->price;
}

std::optional<Price> price_of(const SkeinView& view) {
    return skein_price(*view.lot, view.number);
}

template <class View> Text price(const View& view, const Manner& m) {
    const auto price = price_of(view);
    if (!price) return std::nullopt;
    return price_words(m.language, *price, view.records->studio.currency);
}

template <class View> Text unit_price(const View& view, const Manner& m) {
    const auto price = price_of(view);
    const Mass mass = size_of(view).mass.value;
    if (!price || mass <= Mass{}) return std::nullopt;
    return unit_price_words(m.language, *price, mass, view.records->studio.currency);
}

template <class View> Text price_blank(const View& view, const Manner& m) {
    return only_if(!price_of(view), m, "price.box");
}

const Derivation& unit_price_derivation() {
    static const Derivation derivation{"", "price by weight, half up to the minor unit", "ISO 4217; common practice"};
    return derivation;
}

// Whether one of the lot's dyes is recorded to do so.
template <class Says> auto note_of(Says says, std::string_view key) {
    return [says, key](const LotView& view, const Manner& m) {
        const bool found = std::ranges::any_of(dyes_in(*view.records, *view.lot),
                                               [&](const Dye* dye) { return std::invoke(says, *dye); });
        return only_if(found, m, key);
    };
}

std::optional<Date> day_dyed(const LotView& view) {
    return known_date(view.lot->dyed);
}

Text pot(const SkeinView& view, const Manner& m) {
    const auto pot = pot_of(*view.lot, view.number);
    if (!pot) return std::nullopt;
    return pot_words(m.language, *pot);
}

} // namespace

SkeinSize size_of(const BaseView& view) {
    return view.base->skein;
}

SkeinSize size_of(const LotView& view) {
    return skein_size(view.records->base(view.lot->base.value), *view.lot);
}

SkeinSize size_of(const SkeinView& view) {
    return skein_size(view.records->base(view.lot->base.value), *view.lot, view.number);
}

Derivation fibres_by_market() {
    return {"", "by share, in the names that the studio's market has for them",
            "Regulation (EU) No 1007/2011, Art. 5, 9 and Annex I; 16 CFR 303.6 and 303.7 (names from memory)"};
}

const Vocabulary& base_vocabulary() {
    using Row = Rows<BaseView>;
    static const Vocabulary vocabulary{
        "base",
        // What it is, what a skein holds, how thick it is, how it is cared for.
        together({
            Row::text("base.id", "its id in the records", [](const BaseView& v) { return v.base->id.value; }),
            Row::text("base.name", "its name", [](const BaseView& v) { return v.base->name; }),
            Row::text("base.code", "its short code", [](const BaseView& v) { return v.base->code; },
                      {"", "as recorded; the id where no code is recorded", ""}),
            Row::text(
                "base.fibres", "its fibres, largest share first",
                [](const BaseView& v, const Manner& m) {
                    return fibre_statement(m.language, *v.base, v.records->studio.market);
                },
                fibres_by_market()),
            Row::list(
                "base.fibre_list", "the same one by one", fibre_vocabulary(),
                [](const BaseView& v) { return stated_fibres(*v.base, v.records->studio.market); }, fibres_by_market()),
            put_up_rows<BaseView>("base"),
            Row::text("base.regain", "the agreed allowance for moisture, on the dry weight", regain,
                      {"%", "mean of its fibres' allowances by share; wool as carded unless spun: combed",
                       "Regulation (EU) No 1007/2011, Annex IX"}),
            Row::text("base.dry_weight", "of one skein, without the agreed moisture", dry_weight,
                      {"g", "recorded weight ÷ (1 + allowance), to 0.1 g", "Regulation (EU) No 1007/2011, Annex IX"}),
            Row::text("base.put_up.kind", "skein, mini skein, cone or braid",
                      [](const BaseView& v, const Manner& m) { return words(m.language, v.base->put_up); }),
            yarn_measure_rows(),
            Row::text("base.origin", "where it comes from", [](const BaseView& v) { return v.base->origin; }),
            Row::text(
                "base.provenance", "where it was spun and dyed, on one line",
                [](const BaseView& v, const Manner& m) { return provenance(m.language, *v.base, v.records->studio); },
                {"", "the base's origin and the studio's “made in”, as recorded", ""}),
            Row::text("base.care", "its care in words, on one line",
                      [](const BaseView& v, const Manner& m) { return care_words(m.language, care_in_order(v)); },
                      {"", "in the order wash, bleach, dry, iron, professional", "ISO 3758:2023"}),
            Row::list("base.care_list", "the same one by one", care_vocabulary(), care_in_order,
                      {"", "in the order wash, bleach, dry, iron, professional", "ISO 3758:2023"}),
            Row::text("base.care.words", "its care in words, not there where the studio wants symbols alone",
                      [](const BaseView& v, const Manner& m) {
                          return care_words(m.language, care_if(v, CareStyle::symbols));
                      },
                      {"", "as the studio's “care” has it", ""}),
            Row::list("base.care_symbols", "its care one by one, there only where the studio wants symbols",
                      care_vocabulary(), [](const BaseView& v) { return care_if(v, CareStyle::words); },
                      {"", "as the studio's “care” has it", ""}),
            Row::text("base.care.proposed", "the gentlest care that its fibres usually get; nobody recorded it",
                      proposed,
                      {"", "gentlest need among the fibres, superwash only for its own share", "common practice"}),
            Row::text("base.notes", "the dyer's notes", [](const BaseView& v) { return v.base->notes; }),
        })};
    return vocabulary;
}

const Vocabulary& lot_vocabulary() {
    using Row = Rows<LotView>;
    static const Vocabulary vocabulary{
        "lot",
        together({
            Row::text("lot.id", "the lot's number", [](const LotView& v) { return v.lot->id.value; }),
            Row::text("lot.colourway", "the colourway's name", [](const LotView& v) { return v.lot->colourway; }),
            Row::text("lot.dyed", "the day it was dyed, where known",
                      [](const LotView& v, const Manner& m) { return short_date(m.language, v.lot->dyed); }),
            date_row<LotView>("lot.dyed.short", DateForm::brief, day_dyed),
            date_row<LotView>("lot.dyed.long", DateForm::full, day_dyed),
            date_row<LotView>("lot.dyed.month", DateForm::month, day_dyed),
            date_row<LotView>("lot.dyed.iso", DateForm::iso, day_dyed),
            put_up_rows<LotView>("lot"),
            Row::text("lot.price", "the price of a whole skein", price<LotView>,
                      {"", "as recorded, in the currency’s minor units", "ISO 4217"}),
            Row::text("lot.price.per_100_g", "the same by weight", unit_price<LotView>, unit_price_derivation()),
            Row::text("price.text", "the price of a whole skein", price<LotView>,
                      {"", "as recorded, in the currency’s minor units", "ISO 4217"}),
            Row::text("price.blank", "there only if no price is recorded, to head an empty box", price_blank<LotView>,
                      {"", "no price is recorded", ""}),
            Row::text("lot.skeins", "how many skeins were dyed, spoilt ones among them",
                      [](const LotView& v) { return std::to_string(v.lot->skeins); }),
            Row::text("lot.for_sale", "how many of them are for sale",
                      [](const LotView& v) { return std::to_string(skeins_for_sale(*v.lot).size()); },
                      {"", "the skeins dyed, less those spoilt", "arithmetic"}),
            Row::text("lot.numbers", "their numbers: 1–6, 8–14",
                      [](const LotView& v) { return number_runs(skeins_for_sale(*v.lot)); },
                      {"", "the numbers dyed, without those spoilt", ""}),
            Row::text("lot.pot_count", "how many pots they were dyed in, where there were several",
                      [](const LotView& v) -> Text {
                          const auto pots = pots_of(*v.lot);
                          if (pots.empty()) return std::nullopt;
                          return std::to_string(pots.size());
                      },
                      {"", "counted", ""}),
            Row::text("lot.alternate", "there only if the knitter shall alternate skeins",
                      [](const LotView& v, const Manner& m) { return only_if(v.lot->alternate, m, "yarn.alternate"); },
                      {"", "from “alternate”", ""}),
            Row::text("lot.wash_note", "there only if one of its dyes bleeds",
                      note_of([](const Dye& dye) { return dye.bleeds == true; }, "yarn.wash apart"), of_its_dyes),
            Row::text("lot.crock_note", "there only if one of its dyes crocks",
                      note_of([](const Dye& dye) { return dye.crocks == true; }, "yarn.rubs off"), of_its_dyes),
            Row::text("lot.rinse_note", "there only if one of its dyes never rinses clear",
                      note_of([](const Dye& dye) { return dye.rinses_clear == false; }, "yarn.never rinses clear"),
                      of_its_dyes),
            Row::patch("lot.patch", "its colour, where one was taken",
                       [](const LotView& v, const Manner& m) -> std::optional<Patch> {
                           if (!v.lot->colour) return std::nullopt;
                           return patch_of(m.language, *v.records, *v.lot);
                       },
                       {"", "its recorded colour in sRGB", "CSS Color 4 (sRGB, lab with D50)"}),
            Row::text("lot.notes", "the dyer's notes", [](const LotView& v) { return v.lot->notes; }),
        })};
    return vocabulary;
}

const Vocabulary& skein_vocabulary() {
    using Row = Rows<SkeinView>;
    static const Vocabulary vocabulary{
        "skein",
        together({
            Row::text("skein.number", "its number in the lot",
                      [](const SkeinView& v) { return std::to_string(v.number); }),
            Row::text("skein.count", "how many skeins were dyed, spoilt ones among them",
                      [](const SkeinView& v) { return std::to_string(v.lot->skeins); }),
            Row::text(
                "skein.of", "both: 3 of 12",
                [](const SkeinView& v, const Manner& m) { return place_words(m.language, v.number, v.lot->skeins); },
                {"", "its number, of all that were dyed, spoilt ones among them", ""}),
            Row::text("skein.pot", "the pot it was dyed in, where there were several", pot,
                      {"", "by counting through the pots", ""}),
            Row::text("skein.pot.letter", "its letter alone",
                      [](const SkeinView& v) -> Text {
                          const auto pot = pot_of(*v.lot, v.number);
                          if (!pot) return std::nullopt;
                          return pot_letters(*pot);
                      }),
            put_up_rows<SkeinView>("skein"),
            Row::text("skein.price", "its price; of an odd skein its own, or none", price<SkeinView>),
            Row::text("skein.price.per_100_g", "the same by weight", unit_price<SkeinView>, unit_price_derivation()),
            Row::text(
                "skein.price.unit", "the same, there only where the studio states unit prices",
                [](const SkeinView& v, const Manner& m) {
                    return v.records->studio.unit_price ? unit_price(v, m) : std::nullopt;
                },
                unit_price_derivation()),
            Row::text("skein.price.blank", "there only if it has no price, to head an empty box",
                      price_blank<SkeinView>),
        })};
    return vocabulary;
}

} // namespace dyeleaf
