#include "facts/base_facts.h"

#include "facts/base_price.h"
#include "facts/care_proposal.h"
#include "facts/fibre_statement.h"
#include "facts/moisture.h"
#include "facts/put_up_facts.h"
#include "facts/rounding.h"
#include "facts/rows.h"
#include "facts/wording.h"
#include "facts/yarn_measure_facts.h"
#include "facts/yarn_view.h"
#include "facts/yarn_wording.h"

namespace dyeleaf {

namespace {

using Text = std::optional<std::string>;

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

Text price(const BaseView& view, const Manner& m) {
    const auto prices = prices_on(*view.records, *view.base);
    if (!prices) return std::nullopt;
    const std::string least = price_words(m.language, prices->least, view.records->studio.currency);
    return prices->is_one() ? least : m.language.say("price.from", {{"price", least}});
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

} // namespace

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
            Row::text("base.price", "the price of a skein; from the least, where its lots differ", price,
                      {"", "of the lots whose skeins are of the base's own size", "ISO 4217"}),
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
            Row::text("base.ean", "its article number of 13 digits",
                      [](const BaseView& v) -> Text {
                          const auto& ean = v.base->numbers.ean;
                          return ean ? Text{ean->value} : std::nullopt;
                      }),
            Row::text("base.upc", "its article number of 12 digits",
                      [](const BaseView& v) -> Text {
                          const auto& upc = v.base->numbers.upc;
                          return upc ? Text{upc->value} : std::nullopt;
                      }),
            Row::text("base.notes", "the dyer's notes", [](const BaseView& v) { return v.base->notes; }),
        })};
    return vocabulary;
}

} // namespace dyeleaf
