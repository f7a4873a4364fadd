#include "facts/lot_facts.h"

#include "base/web_address.h"
#include "facts/date_rows.h"
#include "facts/dyes_in.h"
#include "facts/illustration.h"
#include "facts/palette.h"
#include "facts/photo_rows.h"
#include "facts/pots.h"
#include "facts/put_up_facts.h"
#include "facts/rows.h"
#include "facts/skein_numbers.h"
#include "facts/skein_size.h"
#include "facts/swatches.h"
#include "facts/wording.h"
#include "facts/yarn_view.h"
#include "facts/yarn_wording.h"

#include <algorithm>
#include <functional>

namespace dyeleaf {

namespace {

using Text = std::optional<std::string>;

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
    return only_if(m.language, !price_of(view), "price.box");
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
        return only_if(m.language, found, key);
    };
}

std::optional<Date> day_dyed(const LotView& view) {
    return known_date(view.lot->dyed);
}

Text link(const LotView& view) {
    const auto& link = view.records->studio.link;
    return link ? Text{*link + percent_encoded(view.lot->id.value)} : std::nullopt;
}

const Derivation of_it_or_its_base{"", "the lot's own, else its base's", "GS1 General Specifications"};

template <Boxed<Sourced<std::string>> ArticleNumbers::*number_of> Text number(const LotView& view) {
    const auto& own = view.lot->numbers.*number_of;
    const auto& number = own ? own : view.records->base(view.lot->base.value).numbers.*number_of;
    return number ? Text{number->value} : std::nullopt;
}

Text pot(const SkeinView& view, const Manner& m) {
    const auto pot = pot_of(*view.lot, view.number);
    if (!pot) return std::nullopt;
    return pot_words(m.language, *pot);
}

} // namespace

const Vocabulary& lot_vocabulary() {
    using Row = Rows<LotView>;
    static const Vocabulary vocabulary{
        "lot",
        together({
            Row::text("lot.id", "the lot's number", [](const LotView& v) { return v.lot->id.value; }),
            Row::text("lot.colourway", "the colourway's name", [](const LotView& v) { return v.lot->colourway; }),
            Row::text("lot.dyed", "the day it was dyed, where known",
                      [](const LotView& v, const Manner& m) { return short_date(m.language, v.lot->dyed); }),
            date_rows<LotView>("lot.dyed", day_dyed),
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
            Row::text(
                "lot.alternate", "there only if the knitter shall alternate skeins",
                [](const LotView& v, const Manner& m) { return only_if(m.language, v.alternate, "yarn.alternate"); },
                {"", "from “alternate”, else where it visibly differs from another lot by measure", "ISO/CIE 11664-6"}),
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
            Row::list("lot.palette", "the colours of its recipe in the order in which they are laid on",
                      palette_vocabulary(), palette_of,
                      {"", "dyes of the bath in the order of the recipe, then what is shaken on, dye by dye", ""}),
            Row::text(
                "lot.palette.speckled", "there only if some of them are shaken on, which the yarn shows side by side",
                [](const LotView& v, const Manner& m) {
                    const bool speckled =
                        std::ranges::any_of(palette_of(v), [](const PaletteColour& colour) { return !colour.depth; });
                    return only_if(m.language, speckled, "palette.speckled");
                },
                {"", "a line of the recipe names a jar", ""}),
            photo_rows<LotView>("lot", [](const LotView& v) -> const ColourOrNone& { return v.lot->colour; }),
            Row::picture(
                "lot.picture", "a photograph of it",
                [](const LotView& v) { return illustration(v.lot->picture, v.lot->colourway, v.lot->id.value); }),
            Row::text("lot.link", "the address of its page, for a code to scan", link,
                      {"", "the studio's “link” and the lot's id behind it, percent-encoded", "RFC 3986"}),
            Row::text("lot.ean", "its article number of 13 digits", number<&ArticleNumbers::ean>, of_it_or_its_base),
            Row::text("lot.upc", "its article number of 12 digits", number<&ArticleNumbers::upc>, of_it_or_its_base),
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
