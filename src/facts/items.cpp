#include "facts/items.h"

#include "facts/base_facts.h"
#include "facts/card_facts.h"
#include "facts/cards.h"
#include "facts/check_recipe.h"
#include "facts/checks.h"
#include "facts/dye_facts.h"
#include "facts/jar_facts.h"
#include "facts/jar_view.h"
#include "facts/lot_differences.h"
#include "facts/lot_facts.h"
#include "facts/recipe_facts.h"
#include "facts/selection.h"
#include "facts/studio_facts.h"
#include "facts/yarn_view.h"

#include <set>

namespace dyeleaf {

namespace {

std::string card_id(const CardView& card, bool grouped) {
    if (!grouped) return card.dyes.front()->id.value;
    const std::string& line = card.dyes.front()->line;
    const bool by_line = card.together == Together::by_line && !line.empty();
    return "card " + std::to_string(card.number) + (by_line ? ", " + line : "");
}

std::vector<Item> dye_items(const Records& records, const std::optional<Grouping>& grouping, const Selection& selection,
                            const Facts& studio, const Printing& printing, Diagnostics& diagnostics) {
    const Dyes wanted = select_dyes(records, selection, diagnostics);
    std::vector<Item> items;
    for (CardView& card : grouping ? shared_cards(records, wanted, *grouping) : single_cards(records, wanted)) {
        for (const Dye* dye : card.dyes)
            check_dye(records, *dye, printing.today, diagnostics);
        const Dye& first = *card.dyes.front();
        Item item{card_id(card, grouping.has_value()), {}, first.spot};
        if (!printing.counted) card.number = card.count = 1;
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

std::vector<Item> jar_items(const Records& records, const Selection& selection, const Facts& studio, const Date& today,
                            Diagnostics& diagnostics) {
    std::vector<Item> items;
    for (const Jar* jar : select_jars(records, selection, diagnostics)) {
        check_jar(records, *jar, today, diagnostics);
        items.push_back({jar->id.value, Facts::of(JarView{&records, jar}, jar_vocabulary()).within(studio), jar->spot});
    }
    return items;
}

Facts base_facts(const Records& records, const Base& base, const Facts& studio) {
    return Facts::of(BaseView{&records, &base}, base_vocabulary()).within(studio);
}

LotView view_of(const Records& records, const Lot& lot, const LotGroups& by_yarn) {
    return {&records, &lot, asks_to_alternate(by_yarn, lot, records.studio.lot_limits)};
}

Facts lot_facts(const LotView& lot, const Facts& studio) {
    const Base& base = lot.records->base(lot.lot->base.value);
    return Facts::of(lot, lot_vocabulary()).within(base_facts(*lot.records, base, studio));
}

// The lots, and each base that one of them is dyed on.
void check_yarn(const Records& records, const std::vector<const Lot*>& lots, const Date& today,
                Diagnostics& diagnostics) {
    check_lots(records, lots, today, diagnostics);
    std::set<const Base*> bases;
    for (const Lot* lot : lots) {
        const Base& base = records.base(lot->base.value);
        if (bases.insert(&base).second) check_base(records, base, diagnostics);
    }
}

std::vector<Item> lot_items(const Records& records, const Selection& selection, const Facts& studio, const Date& today,
                            Diagnostics& diagnostics) {
    const auto lots = select_lots(records, selection, diagnostics);
    check_yarn(records, lots, today, diagnostics);
    const LotGroups by_yarn = lots_by_yarn(records);
    std::vector<Item> items;
    for (const Lot* lot : lots) {
        check_recipe(records, *lot, diagnostics);
        const LotView view = view_of(records, *lot, by_yarn);
        items.push_back(
            {lot->id.value, Facts::of(view, recipe_vocabulary()).within(lot_facts(view, studio)), lot->spot});
    }
    return items;
}

Items skein_items(const Records& records, const Selection& selection, const Facts& studio, const Date& today,
                  Diagnostics& diagnostics) {
    const auto skeins = std::make_shared<const std::vector<Skein>>(select_skeins(records, selection, diagnostics));
    std::vector<const Lot*> lots;
    for (const Skein& skein : *skeins) {
        if (lots.empty() || lots.back() != skein.lot) lots.push_back(skein.lot);
    }
    check_yarn(records, lots, today, diagnostics);
    return {skeins->size(), [&records, skeins, studio, by_yarn = lots_by_yarn(records)](std::size_t i) {
                const auto& [lot, number] = (*skeins)[i];
                return Item{lot->id.value + ":" + std::to_string(number),
                            Facts::of(SkeinView{&records, lot, number}, skein_vocabulary())
                                .within(lot_facts(view_of(records, *lot, by_yarn), studio)),
                            lot->spot};
            }};
}

std::vector<Item> base_items(const Records& records, const Selection& selection, const Facts& studio,
                             Diagnostics& diagnostics) {
    std::vector<Item> items;
    for (const Base* base : select_bases(records, selection, diagnostics)) {
        check_base(records, *base, diagnostics);
        items.push_back({base->id.value, base_facts(records, *base, studio), base->spot});
    }
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
    case ItemKind::lots: return {&recipe_vocabulary(), &lot_vocabulary(), &base_vocabulary(), studio};
    case ItemKind::bases: return {&base_vocabulary(), studio};
    }
    return {};
}

Items make_items(const Records& records, ItemKind kind, const std::optional<Grouping>& grouping,
                 const Selection& selection, const Printing& printing, Diagnostics& diagnostics) {
    const Facts studio = Facts::of(StudioView{&records.studio, printing.today}, studio_vocabulary())
                             .printed(printing.manner, printing.second);
    switch (kind) {
    case ItemKind::dyes: return Items{dye_items(records, grouping, selection, studio, printing, diagnostics)};
    case ItemKind::jars: return Items{jar_items(records, selection, studio, printing.today, diagnostics)};
    case ItemKind::skeins: return skein_items(records, selection, studio, printing.today, diagnostics);
    case ItemKind::lots: return Items{lot_items(records, selection, studio, printing.today, diagnostics)};
    case ItemKind::bases: return Items{base_items(records, selection, studio, diagnostics)};
    }
    return {};
}

} // namespace dyeleaf
