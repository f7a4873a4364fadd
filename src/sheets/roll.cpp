#include "sheets/roll.h"

#include "base/number.h"
#include "base/words.h"
#include "sheets/refusal.h"

#include <optional>

namespace dyeleaf {

namespace {

// How a label lies; nothing where neither of its sides fits.
std::optional<Turn> lie_on_roll(const Stock& stock, Size label) {
    const Roll& roll = *stock.roll;
    const Length rims = stock.margin * 2;
    for (const Turn turn : {Turn::none, Turn::right}) {
        const Size size = turned_size(turn, label);
        const bool is_allowed = turn == Turn::none || stock.may_turn;
        if (is_allowed && fits(size.width + rims, roll.width) &&
            (!roll.length || fits(size.height + rims, *roll.length)))
            return turn;
    }
    return std::nullopt;
}

Size page_of(const Stock& stock, Size as_it_lies) {
    return {stock.roll->width, stock.roll->length.value_or(as_it_lies.height + stock.gap)};
}

Length half_the_rest(Length whole, Length part) {
    return larger(whole - part, {}) / 2;
}

// "62 − 2 × 1.5 = 59 mm".
std::string room_words(Length whole, Length margin) {
    if (near(margin, {})) return to_string(whole);
    return decimal(whole.in_mm(), 2) + " − 2 × " + decimal(margin.in_mm(), 2) + " = " + to_string(whole - margin * 2);
}

} // namespace

std::vector<SheetPlan> along_roll(const Trims& labels, const std::vector<std::size_t>& order, const Stock& stock,
                                  const NameOfLabel& name, const Spot& at, Diagnostics& diagnostics) {
    const Roll& roll = *stock.roll;
    const auto refusal = [&](const Trim& label) -> std::optional<Refusal> {
        if (roll.length && label.round) {
            return Refusal{
                "the label is " + in_words(label) + ", but the labels of the roll " + in_quotes(stock.name) + " are " +
                    measures({roll.width, *roll.length}) + ": it would come off with corners",
                "choose a roll that is cut off after each label, or round cells (`dyeleaf stocks` lists them)"};
        }
        if (lie_on_roll(stock, label.size)) return std::nullopt;
        return Refusal{"the label is " + in_words(label) + "; the roll " + in_quotes(stock.name) + " takes " +
                           room_words(roll.width, stock.margin) + " across" +
                           (roll.length ? " and " + room_words(*roll.length, stock.margin) + " along it" : "") +
                           (stock.may_turn ? ", and the label does not fit either way round" : ""),
                       "make the label smaller in the layout, or choose another stock with --stock (`dyeleaf stocks` "
                       "lists them)"};
    };
    if (complain_of_refused(labels, name, refusal, at, diagnostics)) return {};
    std::vector<SheetPlan> pages;
    for (const std::size_t label : order) {
        const Turn turn = *lie_on_roll(stock, labels[label].size);
        const Size size = turned_size(turn, labels[label].size);
        const Size page = page_of(stock, size);
        const Point middle = {(page.width - size.width) / 2, (page.height - size.height) / 2};
        pages.push_back({page, {{label, middle, 1, turn}}});
    }
    return pages;
}

Length bleed_on_roll(const Stock& stock, const Trim& trim) {
    const Size label = turned_size(lie_on_roll(stock, trim.size).value_or(Turn::none), trim.size);
    const Size page = page_of(stock, label);
    return smaller(trim.bleed,
                   smaller(half_the_rest(page.width, label.width), half_the_rest(page.height, label.height)));
}

} // namespace dyeleaf
