#include "facts/cards.h"

#include "colour/hue.h"
#include "facts/swatches.h"

#include <algorithm>

namespace dyeleaf {

namespace {

HueKey key_of(const Dye& dye) {
    return hue_key(deepest_colour(dye));
}

std::size_t first_of_line(const Records& records, const Dye& dye) {
    const auto first = std::ranges::find(records.dyes, dye.line, &Dye::line);
    return static_cast<std::size_t>(first - records.dyes.begin());
}

void number(std::vector<CardView>& cards) {
    for (std::size_t i = 0; i < cards.size(); ++i) {
        cards[i].number = static_cast<int>(i) + 1;
        cards[i].count = static_cast<int>(cards.size());
    }
}

} // namespace

Dyes in_line_order(const Records& records, Dyes dyes) {
    std::ranges::stable_sort(dyes, {}, [&](const Dye* dye) {
        return std::pair{first_of_line(records, *dye), key_of(*dye)};
    });
    return dyes;
}

Dyes in_hue_order(Dyes dyes) {
    std::ranges::stable_sort(dyes, {}, [](const Dye* dye) { return key_of(*dye); });
    return dyes;
}

std::vector<CardView> single_cards(const Records& records, const Dyes& wanted) {
    Dyes all;
    for (const Dye& dye : records.dyes)
        all.push_back(&dye);
    std::vector<CardView> cards;
    for (const Dye* dye : in_line_order(records, std::move(all)))
        cards.push_back({&records, {dye}, 1, 1, Together::by_line});
    number(cards);
    std::erase_if(cards,
                  [&](const CardView& card) { return std::ranges::find(wanted, card.dyes.front()) == wanted.end(); });
    return cards;
}

std::vector<CardView> shared_cards(const Records& records, const Dyes& wanted, const Grouping& grouping) {
    const bool by_line = grouping.together == Together::by_line;
    const std::size_t most = static_cast<std::size_t>(std::max(grouping.most, 1));
    std::vector<CardView> cards;
    for (const Dye* dye : by_line ? in_line_order(records, wanted) : in_hue_order(wanted)) {
        const bool starts = cards.empty() || cards.back().dyes.size() == most ||
                            (by_line && cards.back().dyes.front()->line != dye->line);
        if (starts) cards.push_back({&records, {}, 1, 1, grouping.together});
        cards.back().dyes.push_back(dye);
    }
    number(cards);
    return cards;
}

} // namespace dyeleaf
