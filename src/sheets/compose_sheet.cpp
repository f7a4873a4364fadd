#include "sheets/impose.h"

#include "base/overloaded.h"
#include "display/bend.h"
#include "sheets/sheet_geometry.h"
#include "sheets/test_line.h"

#include <algorithm>
#include <array>
#include <utility>
#include <variant>

namespace dyeleaf {

namespace {

constexpr Length mark_width = pt(0.25);
constexpr Rgb mark_colour = {};
constexpr Rgb outline_colour = {0.6, 0.6, 0.6}; // 40 % grey: seen while cutting, not missed where the knife strays

Path ellipse_path(Rect rect) {
    const auto stretched = [&](Point p) {
        return rect.centre() + Point{p.x * (rect.size.width / mm(2)), p.y * (rect.size.height / mm(2))};
    };
    Path path = circle_path({}, mm(1));
    for (auto& step : path) {
        std::visit(Overloaded{[&](MoveTo& move) { move.to = stretched(move.to); },
                              [&](LineTo& line) { line.to = stretched(line.to); },
                              [&](CurveTo& curve) {
                                  curve = {stretched(curve.control1), stretched(curve.control2), stretched(curve.to)};
                              },
                              [](ClosePath&) {}},
                   step);
    }
    return path;
}

Path clipped_path(Rect rect, Length clipped) {
    return {MoveTo{{rect.left() + clipped, rect.top()}},
            LineTo{{rect.right() - clipped, rect.top()}},
            LineTo{{rect.right(), rect.top() + clipped}},
            LineTo{{rect.right(), rect.bottom()}},
            LineTo{{rect.left(), rect.bottom()}},
            LineTo{{rect.left(), rect.top() + clipped}},
            ClosePath{}};
}

// Everything of a label that may be seen: its trim and the bleed around it, in the label's own coordinates.
Path visible_part(const Trim& trim, Length bleed) {
    if (trim.sector) return bend(rounded_path(grown({{}, trim.sector->flat()}, bleed), trim.corner), *trim.sector);
    const Rect rect = grown({{}, trim.size}, bleed);
    if (trim.round) return ellipse_path(rect);
    if (trim.clipped > Length{}) return clipped_path(rect, trim.clipped);
    return bleed > Length{} ? rect_path(rect) : rounded_path(rect, trim.corner);
}

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

// A knife or scissors can follow this one only along its whole line, on whatever stock.
DisplayItem bent_outline(const Trim& trim, Point origin) {
    auto outline = std::make_shared<DisplayList>();
    outline->size = trim.size;
    outline->items.emplace_back(StrokePath{visible_part(trim, {}), outline_colour, mark_width, {}});
    return Group{std::move(outline), Transform::move(origin), std::nullopt};
}

void draw_cut_marks(DisplayList& sheet, const std::vector<Rect>& places, const std::vector<Trim>& trims,
                    const Stock& stock) {
    for (std::size_t i = 0; i < places.size(); ++i) {
        if (trims[i].sector) continue;
        const CutMarks marks = stock.page_per_label ? page_marks(trims[i]) : cut_marks(stock);
        const bool bleeds = bleed_on(stock, trims[i]) > marks.offset;
        if (trims[i].round && !stock.page_per_label)
            sheet.items.emplace_back(StrokePath{ellipse_path(places[i]), outline_colour, mark_width, {}});
        if (const Length clipped = trims[i].clipped; clipped > Length{} && !stock.page_per_label) {
            const Rect& place = places[i];
            for (const auto& [corner, inward] :
                 {std::pair{place.origin, clipped}, std::pair{Point{place.right(), place.top()}, -clipped}})
                sheet.items.emplace_back(StrokePath{line_path(corner + Point{{}, clipped}, corner + Point{inward, {}}),
                                                    outline_colour,
                                                    mark_width,
                                                    {}});
        }
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

} // namespace

DisplayList compose_sheet(const SheetPlan& plan, const std::vector<std::shared_ptr<const DisplayList>>& lists,
                          const std::vector<Trim>& trims, const Stock& stock, Side side, const DisplayList& caption) {
    const auto seen = [&](Rect rect) { return seen_on(side, rect, plan.paper); };
    const Turn turn = side == Side::back_of_pad ? Turn::half : Turn::none;
    DisplayList sheet{plan.paper, {}};
    std::vector<Rect> places;
    for (std::size_t i = 0; i < plan.slots.size(); ++i) {
        places.push_back(seen({plan.slots[i].origin, trims[i].size}));
        sheet.items.emplace_back(Group{lists[i], Transform::move(places[i].origin).after(turned(turn, trims[i].size)),
                                       visible_part(trims[i], bleed_on(stock, trims[i])), true});
    }
    const bool is_cut_here = !stock.cells && side == Side::front;
    if (stock.page_per_label ? stock.page_marks : is_cut_here) draw_cut_marks(sheet, places, trims, stock);
    for (std::size_t i = 0; i < places.size() && side == Side::front; ++i) {
        if (trims[i].sector) sheet.items.push_back(bent_outline(trims[i], places[i].origin));
    }
    if (stock.page_per_label) return sheet;

    std::vector<Rect> taken = occupied(plan, trims, stock);
    std::ranges::transform(taken, taken.begin(), seen);
    if (const auto band = find_test_band(plan.paper, stock.margin, taken, caption.size.height))
        sheet.items.emplace_back(draw_test_line(*band, caption));
    return sheet;
}

} // namespace dyeleaf
