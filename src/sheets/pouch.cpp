#include "sheets/pouch.h"

#include "base/number.h"
#include "base/words.h"
#include "sheets/outline.h"
#include "sheets/refusal.h"
#include "sheets/sheet_geometry.h"
#include "sheets/test_line.h"

#include <algorithm>
#include <memory>

namespace dyeleaf {

bool goes_into_pouch(const Trims& labels, const Stock& stock, const NameOfLabel& name, const Spot& at,
                     Diagnostics& diagnostics) {
    const Laminate& laminate = *stock.laminate;
    const Length film = laminate.film * 2;
    const auto refusal = [&](const Trim& label) -> std::optional<Refusal> {
        const bool lies = label.size.width > label.size.height;
        const bool pouch_lies = laminate.pouch.width > laminate.pouch.height;
        const Size pouch = lies == pouch_lies ? laminate.pouch : turned_size(Turn::right, laminate.pouch);
        const Size needed = {label.size.width + film, label.size.height + film};
        const bool wide = !fits(needed.width, pouch.width);
        if (!wide && fits(needed.height, pouch.height)) return std::nullopt;
        const Length side = wide ? label.size.width : label.size.height;
        const Length across = wide ? pouch.width : pouch.height;
        return Refusal{"the card is " + in_words(label) + ", and with film on both sides " + decimal(side.in_mm(), 2) +
                           " + 2 × " + decimal(laminate.film.in_mm(), 2) + " = " + to_string(side + film) +
                           "; the pouch of " + in_quotes(stock.name) + " is " + to_string(across) +
                           (wide ? " wide: " : " high: ") + to_string(side + film - across) + " are missing",
                       "take a larger pouch, or a card of at most " +
                           measures({pouch.width - film, pouch.height - film})};
    };
    return !complain_of_refused(labels, name, refusal, at, diagnostics);
}

std::vector<std::size_t> sheets_to_lay(const std::vector<SheetPlan>& plans, const Trims& labels) {
    const auto places = [&](const SheetPlan& plan) {
        std::vector<Rect> rects;
        for (const Slot& slot : plan.slots)
            rects.push_back(place_of(slot, labels[slot.label]));
        return rects;
    };
    std::vector<std::size_t> sheets;
    for (std::size_t i = 0; i < plans.size(); ++i) {
        const std::vector<Rect> here = places(plans[i]);
        const auto is_shown_by = [&](std::size_t other) {
            const std::vector<Rect> there = places(plans[other]);
            return std::ranges::all_of(here,
                                       [&](const Rect& rect) { return std::ranges::find(there, rect) != there.end(); });
        };
        if (std::ranges::none_of(sheets, is_shown_by)) sheets.push_back(i);
    }
    return sheets;
}

DisplayList compose_laying_sheet(const SheetPlan& plan, const std::vector<DisplayList>& numbers,
                                 const std::vector<Trim>& trims, const Stock& stock, const DisplayList& caption) {
    constexpr Length line = pt(0.5);
    constexpr Rgb film_colour = {0.4, 0.4, 0.4};
    const Length film = stock.laminate->film;
    DisplayList sheet{plan.paper, {}};
    std::vector<Rect> taken;
    for (std::size_t i = 0; i < plan.slots.size(); ++i) {
        const Trim& trim = trims[i];
        auto card = std::make_shared<DisplayList>(DisplayList{trim.size, {}});
        card->items.emplace_back(StrokePath{visible_part(trim, {}), Rgb{}, line, {}});
        card->items.emplace_back(StrokePath{film_outline(trim, film), film_colour, line, {mm(2), mm(1.5)}});
        const Size number = numbers[i].size;
        const Point middle =
            trim.sector ? trim.sector->at(Rect{{}, trim.sector->flat()}.centre()) : Rect{{}, trim.size}.centre();
        card->items.emplace_back(Group{std::make_shared<const DisplayList>(numbers[i]),
                                       Transform::move(middle - Rect{{}, number}.centre()), std::nullopt});
        const Rect place = place_of(plan.slots[i], trim);
        const Transform placed = Transform::move(place.origin).after(turned(plan.slots[i].turn, trim.size));
        sheet.items.emplace_back(Group{std::move(card), placed, std::nullopt});
        taken.push_back(grown(place, film));
    }
    if (const auto band = find_test_band(plan.paper, stock.margin, taken, caption.size.height))
        sheet.items.emplace_back(draw_test_line(*band, caption));
    return sheet;
}

} // namespace dyeleaf
