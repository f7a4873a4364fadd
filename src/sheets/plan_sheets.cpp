#include "sheets/impose.h"

#include "base/words.h"
#include "sheets/cell_fit.h"
#include "sheets/pouch.h"
#include "sheets/refusal.h"
#include "sheets/roll.h"
#include "sheets/sheet_geometry.h"
#include "sheets/test_line.h"

#include <algorithm>
#include <optional>
#include <span>
#include <utility>

namespace dyeleaf {

namespace {

// The outline of each slot's label.
std::vector<Trim> trims_of(const SheetPlan& plan, const Trims& labels) {
    std::vector<Trim> trims;
    trims.reserve(plan.slots.size());
    for (const Slot& slot : plan.slots)
        trims.push_back(labels[slot.label]);
    return trims;
}

void warn_without_test_line(const std::vector<SheetPlan>& sheets, const Trims& labels, const Stock& stock,
                            const Spot& at, Diagnostics& diagnostics) {
    for (const SheetPlan& sheet : sheets) {
        if (find_test_band(sheet.paper, stock.margin, occupied(sheet, trims_of(sheet, labels), stock), {})) continue;
        diagnostics.warning(at, "the stock " + in_quotes(stock.name) + " has no room for the 100 mm test line",
                            "print one sheet at actual size and measure a label with a ruler before you print the "
                            "rest");
    }
}

// Which label each place holds: copies of one label follow one another.
std::vector<std::size_t> with_copies(std::size_t labels, const std::vector<int>& copies) {
    std::vector<std::size_t> order;
    for (std::size_t label = 0; label < labels; ++label)
        order.insert(order.end(), copies.empty() ? 1 : static_cast<std::size_t>(std::max(copies[label], 0)), label);
    return order;
}

// The same places, each with consecutive labels down through the sheets.
void deal_into_piles(std::vector<SheetPlan>& sheets, const std::vector<std::size_t>& order) {
    std::vector<Slot*> slots;
    for (SheetPlan& sheet : sheets) {
        for (Slot& slot : sheet.slots)
            slots.push_back(&slot);
    }
    std::ranges::stable_sort(slots, {}, &Slot::number);
    for (std::size_t i = 0; i < slots.size(); ++i)
        slots[i]->label = order[i];
}

bool are_one_size(const Trims& labels) {
    const Size first = labels[0].size;
    return std::ranges::all_of(labels.kinds(), [&](const Trim& label) {
        return near(label.size.width, first.width) && near(label.size.height, first.height);
    });
}

std::vector<SheetPlan> page_per_label(const Trims& labels, const std::vector<std::size_t>& order, const Stock& stock) {
    std::vector<SheetPlan> sheets;
    for (const std::size_t label : order) {
        const Length rim = page_rim(stock, labels[label]);
        sheets.push_back({grown({{}, labels[label].size}, rim).size, {{label, {rim, rim}, 1}}});
    }
    return sheets;
}

// An empty one with room for as many labels as the last: most sheets of a run are full.
SheetPlan sheet_like_last(const std::vector<SheetPlan>& sheets, Size paper) {
    SheetPlan sheet{paper, {}};
    if (!sheets.empty()) sheet.slots.reserve(sheets.back().slots.size());
    return sheet;
}

// Ready-cut cells.

// Whether every used cell is on the sheet, and not every one is used.
bool leaves_room(const std::set<int>& used, int cells, const Stock& stock, const Spot& at, Diagnostics& diagnostics) {
    if (used.empty()) return true;
    const std::string count = std::to_string(cells);
    if (*used.rbegin() > cells) {
        diagnostics.error(at,
                          "there is no cell " + std::to_string(*used.rbegin()) + ": " + in_quotes(stock.name) +
                              " has " + count + " cells",
                          "count the cells that are used up row by row, from 1, on the first sheet only");
        return false;
    }
    if (static_cast<int>(used.size()) < cells) return true;
    diagnostics.error(at, "all " + count + " cells of the first sheet are used up, by what --used and --skip say",
                      "take a new sheet, and leave them away");
    return false;
}

// A label may be smaller than its cell; it lies in the middle then.
std::vector<SheetPlan> fill_cells(const Trims& labels, const std::vector<std::size_t>& order, const Stock& stock,
                                  const ImposeOptions& options, const Spot& at, Diagnostics& diagnostics) {
    const std::vector<Rect> cells = cell_rects(*stock.cells);
    const std::set<int>& used = options.used;
    const auto refusal = [&](const Trim& label) { return refusal_by_cell(label, stock); };
    const bool wrong = complain_of_refused(labels, options.name, refusal, at, diagnostics);
    if (!leaves_room(used, static_cast<int>(cells.size()), stock, at, diagnostics) || wrong) return {};
    std::vector<SheetPlan> sheets;
    for (auto label = order.begin(); label != order.end();) {
        const bool is_first = sheets.empty();
        SheetPlan& sheet = sheets.emplace_back(sheet_like_last(sheets, stock.paper));
        for (int number = 1; number <= static_cast<int>(cells.size()) && label != order.end(); ++number) {
            if (is_first && used.contains(number)) continue;
            const Rect& cell = cells[static_cast<std::size_t>(number) - 1];
            const Size size = labels[*label].size;
            const Point centring = {(cell.size.width - size.width) / 2, (cell.size.height - size.height) / 2};
            sheet.slots.push_back({*label++, cell.origin + centring, number});
        }
    }
    return sheets;
}

// Plain card.

bool holds(Size room, Size label) {
    return fits(label.width, room.width) && fits(label.height, room.height);
}

struct Row {
    std::vector<Slot> slots; // places from the row's own left end
    Size size;
};

// As many of the first labels as go beside one another; one at the least.
Row fill_row(const Trims& labels, std::span<const std::size_t> order, Length width, Length gap) {
    Row row;
    for (const std::size_t label : order) {
        const Size size = labels[label].size;
        const Length x = row.slots.empty() ? Length{} : row.size.width + gap;
        if (!row.slots.empty() && !fits(x + size.width, width)) break;
        row.slots.push_back({label, {x, {}}, 0});
        row.size = {x + size.width, larger(row.size.height, size.height)};
    }
    return row;
}

// Rows put on sheets from the top. The block of labels is centred from left to right, alike on every sheet, so that a
// pile of sheets can be cut at once; where there is room at the top it is left for the cut marks.
std::vector<SheetPlan> fill_card(const Trims& labels, const std::vector<std::size_t>& order, Size paper,
                                 const Stock& stock) {
    const Rect room = card_room(paper, stock);
    std::vector<SheetPlan> sheets;
    Size block; // of the widest and of the tallest sheet
    Length y;
    for (std::span<const std::size_t> rest{order}; !rest.empty();) {
        const Row row = fill_row(labels, rest, room.size.width, stock.gap);
        rest = rest.subspan(row.slots.size());
        if (sheets.empty() || !fits(y + row.size.height, room.size.height)) {
            sheets.push_back(sheet_like_last(sheets, paper));
            y = {};
        }
        for (const Slot& slot : row.slots)
            sheets.back().slots.push_back(
                {slot.label, slot.origin + Point{{}, y}, static_cast<int>(sheets.back().slots.size()) + 1});
        block = {larger(block.width, row.size.width), larger(block.height, y + row.size.height)};
        y += row.size.height + stock.gap;
    }
    const Length for_marks = stock.cut == Cut::corner_marks ? cut_marks(stock).reach() : Length{};
    const Point corner =
        room.origin + Point{(room.size.width - block.width) / 2, smaller(for_marks, room.size.height - block.height)};
    for (SheetPlan& sheet : sheets) {
        for (Slot& slot : sheet.slots)
            slot.origin = slot.origin + corner;
    }
    return sheets;
}

void complain_too_large(const Trims& labels, const std::vector<Size>& ways, const Stock& stock, const NameOfLabel& name,
                        const Spot& at, Diagnostics& diagnostics) {
    std::string largest = measures(card_room(ways.front(), stock).size);
    if (ways.size() > 1) largest += ", or " + measures(card_room(ways.back(), stock).size) + " with the sheet turned";
    const auto refusal = [&](const Trim& label) -> std::optional<Refusal> {
        const auto takes = [&](Size paper) { return holds(card_room(paper, stock).size, label.size); };
        if (std::ranges::any_of(ways, takes)) return std::nullopt;
        return Refusal{"the label is " + in_words(label) + "; " + in_quotes(stock.name) + " takes at most " + largest,
                       "make the label smaller in the layout, or choose a larger stock with --stock (`dyeleaf "
                       "stocks` lists them); one with `page per label: yes` takes any size"};
    };
    if (complain_of_refused(labels, name, refusal, at, diagnostics)) return;
    diagnostics.error(at,
                      "some labels fit " + in_quotes(stock.name) +
                          " only with the sheet upright, others only with it "
                          "on its side",
                      "print them in two goes with --only");
}

// Labels that share their cuts are alike, have straight sides, and end at the cut.
bool may_share_cuts(const Trims& labels, const Stock& stock, const Spot& at, Diagnostics& diagnostics) {
    const std::string other = "choose a stock with corner marks, such as a4-card";
    const auto is_curved = [](const Trim& label) { return label.round || label.sector; };
    if (const auto curved = std::ranges::find_if(labels.kinds(), is_curved); curved != labels.kinds().end()) {
        diagnostics.error(at,
                          std::string{curved->round ? "round labels" : "labels that are cut along an arc"} +
                              " cannot share a cut, and " + in_quotes(stock.name) + " has single cuts",
                          other);
        return false;
    }
    if (!are_one_size(labels)) {
        diagnostics.error(
            at, "labels of different sizes cannot share their cuts, and " + in_quotes(stock.name) + " has single cuts",
            "print those of one size at a time with --only, or " + other);
        return false;
    }
    if (std::ranges::any_of(labels.kinds(), [](const Trim& label) { return label.bleed > Length{}; })) {
        diagnostics.warning(at,
                            "these labels have colour that runs past their edges, and " + in_quotes(stock.name) +
                                " has one cut between neighbours: a knife that strays leaves a rim of the "
                                "neighbour's colour",
                            other + ", which leaves a gap between them");
    }
    return true;
}

std::vector<SheetPlan> cut_from_card(const Trims& labels, const std::vector<std::size_t>& order, const Stock& stock,
                                     const NameOfLabel& name, const Spot& at, Diagnostics& diagnostics) {
    if (stock.cut == Cut::single_cuts && !may_share_cuts(labels, stock, at, diagnostics)) return {};
    if (stock.laminate && !goes_into_pouch(labels, stock, name, at, diagnostics)) return {};
    std::vector<Size> ways = {stock.paper};
    if (stock.may_turn) ways.push_back(turned_size(Turn::right, stock.paper));

    const auto holds_all = [&](Size paper) {
        const Size room = card_room(paper, stock).size;
        return std::ranges::all_of(labels.kinds(), [&](const Trim& label) { return holds(room, label.size); });
    };
    std::vector<SheetPlan> best;
    bool possible = false;
    for (const Size& paper : ways) {
        if (!holds_all(paper)) continue;
        std::vector<SheetPlan> sheets = fill_card(labels, order, paper, stock);
        if (possible && sheets.size() >= best.size()) continue;
        best = std::move(sheets);
        possible = true;
    }
    if (!possible) complain_too_large(labels, ways, stock, name, at, diagnostics);
    return best;
}

} // namespace

std::vector<SheetPlan> plan_sheets(const Trims& labels, const Stock& stock, const ImposeOptions& options,
                                   const Spot& at, Diagnostics& diagnostics) {
    const std::vector<std::size_t> order = with_copies(labels.size(), options.copies);
    if (order.empty()) return {};
    if (!stock.cells && !options.used.empty()) {
        diagnostics.error(at, "--used and --skip count ready-cut cells, and " + in_quotes(stock.name) + " has none",
                          "leave them away, or choose a stock with cells (`dyeleaf stocks` lists them)");
        return {};
    }
    if (stock.roll) return along_roll(labels, order, stock, options.name, at, diagnostics);
    if (stock.page_per_label) return page_per_label(labels, order, stock);
    if (options.piles && !are_one_size(labels)) {
        diagnostics.error(at, "labels of different sizes cannot be cut as one pile",
                          "leave --piles away, or print those of one size at a time with --only");
        return {};
    }
    std::vector<SheetPlan> sheets = stock.cells ? fill_cells(labels, order, stock, options, at, diagnostics)
                                                : cut_from_card(labels, order, stock, options.name, at, diagnostics);
    if (options.piles) deal_into_piles(sheets, order);
    warn_without_test_line(sheets, labels, stock, at, diagnostics);
    return sheets;
}

} // namespace dyeleaf
