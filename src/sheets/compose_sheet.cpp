#include "sheets/impose.h"

#include "sheets/cut_lines.h"
#include "sheets/outline.h"
#include "sheets/sheet_geometry.h"
#include "sheets/test_line.h"

#include <algorithm>
#include <array>
#include <utility>

namespace dyeleaf {

namespace {

constexpr Length mark_width = cut_line_width;
constexpr Rgb mark_colour = {};
constexpr Rgb outline_colour = {0.6, 0.6, 0.6}; // 40 % grey: seen while cutting, not missed where the knife strays

struct Mark {
    Point from, to;
};

// Two marks at each corner, along the lines of the cut.
std::vector<Mark> corner_marks(Rect trim, CutMarks marks) {
    std::vector<Mark> result;
    for (const auto& [x, outward_x] : {std::pair{trim.left(), -1.0}, std::pair{trim.right(), 1.0}}) {
        for (const auto& [y, outward_y] : {std::pair{trim.top(), -1.0}, std::pair{trim.bottom(), 1.0}}) {
            result.push_back({{x + marks.offset * outward_x, y}, {x + marks.reach() * outward_x, y}});
            result.push_back({{x, y + marks.offset * outward_y}, {x, y + marks.reach() * outward_y}});
        }
    }
    return result;
}

// One mark at the middle of each side.
std::vector<Mark> centre_marks(Rect trim, CutMarks marks) {
    const Point c = trim.centre();
    return {{{trim.left() - marks.offset, c.y}, {trim.left() - marks.reach(), c.y}},
            {{trim.right() + marks.offset, c.y}, {trim.right() + marks.reach(), c.y}},
            {{c.x, trim.top() - marks.offset}, {c.x, trim.top() - marks.reach()}},
            {{c.x, trim.bottom() + marks.offset}, {c.x, trim.bottom() + marks.reach()}}};
}

Rect inked(const Mark& mark) {
    const Point least = {smaller(mark.from.x, mark.to.x), smaller(mark.from.y, mark.to.y)};
    const Point most = {larger(mark.from.x, mark.to.x), larger(mark.from.y, mark.to.y)};
    return grown({least, {most.x - least.x, most.y - least.y}}, mark_width / 2);
}

// What no straight cut follows; a sector shows it on whatever stock.
DisplayItem whole_outline(const Trim& trim, const Transform& place) {
    auto outline = std::make_shared<DisplayList>();
    outline->size = trim.size;
    outline->items.emplace_back(StrokePath{visible_part(trim, {}), outline_colour, mark_width, {}});
    return Group{std::move(outline), place, std::nullopt};
}

void draw_cut_marks(DisplayList& sheet, const std::vector<Rect>& places, const std::vector<Trim>& trims,
                    const Stock& stock) {
    for (std::size_t i = 0; i < places.size(); ++i) {
        if (trims[i].sector) continue;
        const CutMarks marks = stock.page_per_label ? page_marks(trims[i]) : cut_marks(stock);
        const bool bleeds = bleed_on(stock, trims[i]) > marks.offset;
        if (trims[i].round && !stock.page_per_label)
            sheet.items.emplace_back(StrokePath{ellipse_path(places[i]), outline_colour, mark_width, {}});
        for (const Mark& mark : trims[i].round ? centre_marks(places[i], marks) : corner_marks(places[i], marks)) {
            const auto lies_on = [&](const Rect& place) { return overlap(inked(mark), place); };
            if (std::ranges::any_of(places, lies_on)) continue;
            const Path path = line_path(mark.from, mark.to);
            // On bleeding colour a black mark needs a white one under it to be seen.
            if (bleeds) sheet.items.emplace_back(StrokePath{path, Rgb{1, 1, 1}, mark_width * 4, {}});
            sheet.items.emplace_back(StrokePath{path, mark_colour, mark_width, {}});
        }
    }
}

// Right across the sheet where all labels are alike; lines of different ones would only be taken for one another.
void draw_full_lines(DisplayList& sheet, const std::vector<Rect>& places, const std::vector<Trim>& trims,
                     const Stock& stock) {
    const Rect room = stock.roll ? Rect{{}, sheet.size} : lines_room(sheet.size, stock);
    const bool alike = std::ranges::all_of(places, [&](const Rect& place) {
        return near(place.size.width, places[0].size.width) && near(place.size.height, places[0].size.height);
    });
    std::vector<Rect> straight;
    std::vector<Rect> areas;
    std::vector<Rect> inked;
    for (std::size_t i = 0; i < places.size(); ++i) {
        inked.push_back(grown(places[i], bleed_on(stock, trims[i])));
        if (trims[i].round) {
            sheet.items.emplace_back(StrokePath{ellipse_path(places[i]), outline_colour, mark_width, {}});
        } else if (!trims[i].sector) {
            straight.push_back(places[i]);
            areas.push_back(alike ? room : grown(places[i], stock.gap / 2));
        }
    }
    for (const CutLine& line : full_cut_lines(straight, areas, inked))
        sheet.items.emplace_back(StrokePath{line_path(line.from, line.to), outline_colour, cut_line_width, {}});
}

void draw_single_cuts(DisplayList& sheet, const std::vector<Rect>& places, const Stock& stock) {
    const CutMarks marks = cut_marks(stock);
    for (const CutLine& line : shared_cut_marks(places, marks.offset, marks.length))
        sheet.items.emplace_back(StrokePath{line_path(line.from, line.to), mark_colour, cut_line_width, {}});
}

void draw_cuts(DisplayList& sheet, const std::vector<Rect>& places, const std::vector<Trim>& trims,
               const Stock& stock) {
    if (stock.roll || stock.cut == Cut::full_lines) return draw_full_lines(sheet, places, trims, stock);
    if (stock.cut == Cut::single_cuts) return draw_single_cuts(sheet, places, stock);
    draw_cut_marks(sheet, places, trims, stock);
}

// Pages for a press are marked on both sides; sheets are cut with their fronts up, and so is a roll.
bool shows_cuts(const Stock& stock, Side side) {
    if (stock.page_per_label && !stock.roll) return stock.page_marks;
    const bool ready_cut = stock.cells || (stock.roll && stock.roll->length);
    return !ready_cut && side == Side::front;
}

} // namespace

DisplayList compose_sheet(const SheetPlan& plan, const std::vector<std::shared_ptr<const DisplayList>>& lists,
                          const std::vector<Trim>& trims, const Stock& stock, Side side, const DisplayList& caption) {
    const auto seen = [&](Rect rect) { return seen_on(side, rect, plan.paper); };
    DisplayList sheet{plan.paper, {}};
    std::vector<Rect> places;
    for (std::size_t i = 0; i < plan.slots.size(); ++i) {
        places.push_back(seen(place_of(plan.slots[i], trims[i])));
        const Turn turn = seen_on(side, plan.slots[i].turn);
        sheet.items.emplace_back(Group{lists[i], Transform::move(places[i].origin).after(turned(turn, trims[i].size)),
                                       visible_part(trims[i], bleed_on(stock, trims[i])), true});
    }
    if (shows_cuts(stock, side)) draw_cuts(sheet, places, trims, stock);
    for (std::size_t i = 0; i < plan.slots.size() && side == Side::front; ++i) {
        if (trims[i].sector || (trims[i].clipped > Length{} && shows_cuts(stock, side)))
            sheet.items.push_back(whole_outline(trims[i], std::get<Group>(sheet.items[i]).transform));
    }
    if (stock.page_per_label) return sheet;

    std::vector<Rect> taken = occupied(plan, trims, stock);
    std::ranges::transform(taken, taken.begin(), seen);
    if (const auto band = find_test_band(plan.paper, stock.margin, taken, caption.size.height))
        sheet.items.emplace_back(draw_test_line(*band, caption));
    return sheet;
}

} // namespace dyeleaf
