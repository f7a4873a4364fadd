#include "facts/items.h"

#include "base/words.h"
#include "facts/card_facts.h"
#include "facts/cards.h"
#include "facts/colour.h"
#include "facts/dye_facts.h"
#include "facts/jar_facts.h"
#include "facts/mix.h"
#include "facts/selection.h"
#include "facts/studio_facts.h"
#include "facts/swatches.h"
#include "facts/wording.h"
#include "facts/yarn_facts.h"

#include <variant>

namespace dyeleaf {

namespace {

// What is warned of beside the items: neither stops a label, both are better known before it is printed.

void check_colour(const std::optional<Sourced<RecordedColour>>& colour, const std::string& whose,
                  Diagnostics& diagnostics) {
    const Lab* lab = colour ? std::get_if<Lab>(&colour->value) : nullptr;
    if (lab == nullptr || to_rgb(*lab).in_gamut) return;
    diagnostics.warning(colour->spot, "the colour of " + whose + " is stronger than a screen or printer can show",
                        "the nearest one is printed; lay real yarn beside it");
}

void check_colours(const Records& records, const Dye& dye, Diagnostics& diagnostics) {
    for (const Swatch& swatch : dye.swatches) {
        check_colour(swatch.colour, dye.name + " at " + label_words(swatch, records.base(swatch.base.value)),
                     diagnostics);
    }
    if (!dye.breaks_into) return;
    for (const Component& component : *dye.breaks_into)
        check_colour(component.colour, component.name + " in " + dye.name, diagnostics);
}

void check_rounding(const Records& records, const Jar& jar, Diagnostics& diagnostics) {
    const Mix mix = mix_of(records, jar);
    if (!rounding_shows(mix)) return;
    diagnostics.warning(jar.spot,
                        "weighed in steps of " + mass_words(records.studio.scale_step) + ", jar " + jar.id.value +
                            " holds " + strength_words(*mix.strength) + " dye instead of " +
                            strength_words(*mix.intended_strength),
                        "mix a larger batch, or weigh it on a finer scale");
}

std::string card_id(const CardView& card, bool grouped) {
    if (!grouped) return card.dyes.front()->id.value;
    return "card " + std::to_string(card.number) + (card.group.empty() ? "" : ", " + card.group);
}

std::vector<Item> dye_items(const Records& records, const std::optional<Grouping>& grouping, const Selection& selection,
                            const Facts& studio, Diagnostics& diagnostics) {
    const Dyes wanted = select_dyes(records, selection, diagnostics);
    std::vector<Item> items;
    for (CardView& card : grouping ? shared_cards(records, wanted, *grouping) : single_cards(records, wanted)) {
        for (const Dye* dye : card.dyes)
            check_colours(records, *dye, diagnostics);
        const Dye& first = *card.dyes.front();
        Item item{card_id(card, grouping.has_value()), {}, first.spot};
        if (grouping) {
            item.facts = Facts::of(std::move(card), card_vocabulary()).within(studio);
        } else {
            item.facts = Facts::of(DyeView{&records, &first}, dye_vocabulary())
                             .within(Facts::of(std::move(card), card_place_vocabulary()))
                             .within(studio);
        }
        items.push_back(std::move(item));
    }
    return items;
}

std::vector<Item> jar_items(const Records& records, const Selection& selection, const Facts& studio,
                            Diagnostics& diagnostics) {
    std::vector<Item> items;
    for (const Jar* jar : select_jars(records, selection, diagnostics)) {
        check_rounding(records, *jar, diagnostics);
        items.push_back({jar->id.value, Facts::of(JarView{&records, jar}, jar_vocabulary()).within(studio), jar->spot});
    }
    return items;
}

Facts base_facts(const Records& records, const Base& base, const Facts& studio) {
    return Facts::of(BaseView{&records, &base}, base_vocabulary()).within(studio);
}

Facts lot_facts(const Records& records, const Lot& lot, const Facts& studio) {
    return Facts::of(LotView{&records, &lot}, lot_vocabulary())
        .within(base_facts(records, records.base(lot.base.value), studio));
}

std::vector<Item> lot_items(const Records& records, const Selection& selection, const Facts& studio,
                            Diagnostics& diagnostics) {
    std::vector<Item> items;
    for (const Lot* lot : select_lots(records, selection, diagnostics)) {
        check_colour(lot->colour, "lot " + lot->id.value, diagnostics);
        items.push_back({lot->id.value, lot_facts(records, *lot, studio), lot->spot});
    }
    return items;
}

std::vector<Item> skein_items(const Records& records, const Selection& selection, const Facts& studio,
                              Diagnostics& diagnostics) {
    std::vector<Item> items;
    for (const Skein& skein : select_skeins(records, selection, diagnostics)) {
        const Lot& lot = *skein.lot;
        check_colour(lot.colour, "lot " + lot.id.value, diagnostics);
        items.push_back(
            {lot.id.value + ":" + std::to_string(skein.number),
             Facts::of(SkeinView{&lot, skein.number}, skein_vocabulary()).within(lot_facts(records, lot, studio)),
             lot.spot});
    }
    return items;
}

std::vector<Item> base_items(const Records& records, const Selection& selection, const Facts& studio,
                             Diagnostics& diagnostics) {
    std::vector<Item> items;
    for (const Base* base : select_bases(records, selection, diagnostics))
        items.push_back({base->id.value, base_facts(records, *base, studio), base->spot});
    return items;
}

} // namespace

std::vector<const Vocabulary*> vocabularies(ItemKind kind, bool grouped) {
    const Vocabulary* studio = &studio_vocabulary();
    switch (kind) {
    case ItemKind::dyes:
        if (grouped) return {&card_vocabulary(), studio};
        return {&dye_vocabulary(), &card_place_vocabulary(), studio};
    case ItemKind::jars: return {&jar_vocabulary(), studio};
    case ItemKind::skeins: return {&skein_vocabulary(), &lot_vocabulary(), &base_vocabulary(), studio};
    case ItemKind::lots: return {&lot_vocabulary(), &base_vocabulary(), studio};
    case ItemKind::bases: return {&base_vocabulary(), studio};
    }
    return {};
}

std::vector<Item> make_items(const Records& records, ItemKind kind, const std::optional<Grouping>& grouping,
                             const Selection& selection, const Date& today, Diagnostics& diagnostics) {
    const Facts studio = Facts::of(StudioView{&records.studio, today}, studio_vocabulary());
    switch (kind) {
    case ItemKind::dyes: return dye_items(records, grouping, selection, studio, diagnostics);
    case ItemKind::jars: return jar_items(records, selection, studio, diagnostics);
    case ItemKind::skeins: return skein_items(records, selection, studio, diagnostics);
    case ItemKind::lots: return lot_items(records, selection, studio, diagnostics);
    case ItemKind::bases: return base_items(records, selection, studio, diagnostics);
    }
    return {};
}

} // namespace dyeleaf
