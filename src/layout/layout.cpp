#include "layout/layout.h"

#include "base/words.h"
#include "display/bend.h"
#include "layout/check_label.h"
#include "layout/check_play.h"
#include "layout/fill.h"
#include "layout/look_alikes.h"
#include "layout/marks.h"
#include "layout/place.h"
#include "layout/sharpness.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <utility>

namespace dyeleaf {

namespace {

std::optional<Length> resolved(const LengthOrFact& length, const Facts& facts) {
    if (const auto* fixed = std::get_if<Length>(&length.value)) return *fixed;
    const auto value = facts.find(std::get<std::string>(length.value));
    const auto* fact = value ? std::get_if<Length>(&*value) : nullptr;
    return fact == nullptr ? std::nullopt : std::optional{*fact};
}

std::string meaning_of(const std::string& fact, const Facts& facts) {
    for (const Vocabulary* vocabulary : facts.vocabularies()) {
        if (const FactRow* row = vocabulary->find(fact)) return row->meaning;
    }
    return "unknown";
}

std::optional<Length> required(const LengthOrFact& length, const Item& item, Diagnostics& diagnostics) {
    const auto value = resolved(length, item.facts);
    if (!value) {
        const auto& fact = std::get<std::string>(length.value);
        diagnostics.error(item.spot,
                          in_quotes(item.id) + " has nothing recorded for " + in_quotes(fact) + ": " +
                              meaning_of(fact, item.facts),
                          "record it, or leave " + in_quotes(item.id) + " out with --only");
        return std::nullopt;
    }
    if (*value > Length{}) return value;
    diagnostics.error(item.spot, in_quotes(item.id) + " gives the label a size of " + to_string(*value),
                      "check the measures recorded for it");
    return std::nullopt;
}

void warn_if_below(Length least, Length length, const std::string& side, const Design& design, const Item& item,
                   Diagnostics& diagnostics) {
    if (fits(least, length)) return;
    diagnostics.warning(item.spot,
                        in_quotes(item.id) + ": the label is " + to_string(length) + " " + side + ", and the layout " +
                            in_quotes(design.name) + " is made for at least " + to_string(least),
                        "choose a larger jar, or another layout");
}

// Tries the label with its texts at full size, then ever smaller, until all of it fits.
Placement best_placement(const FilledBox& box, Size size, const Shape& shape, const Typesetter& typesetter, Ink ink) {
    const auto fits_trim = [&](const Zone& zone) { return !is_text(zone) || keeps_inside(zone, size, shape); };
    // A text on a circle leaves less room in the middle than its rectangle says.
    const auto leaves_arcs_alone = [](const Placement& one) {
        return std::ranges::none_of(one.zones, [&](const Zone& arc) {
            const auto disturbs = [&](const Zone& other) {
                return &other != &arc && is_text(other) && overlap(arc, other);
            };
            return !arc.letters.empty() && std::ranges::any_of(one.zones, disturbs);
        });
    };
    Placement placement;
    for (const double level : shrink_levels) {
        const Trial trial{&typesetter, level};
        placement = place(box, size, shape.bleed, trial, ink);
        if (std::ranges::none_of(placement.misfits, wants_more_room) &&
            std::ranges::all_of(placement.zones, fits_trim) && leaves_arcs_alone(placement))
            break;
    }
    return placement;
}

// What is laid out on a rectangle first is as wide as the sector's narrow edge; lengths across shrink by as much.
Size flat_size(const LabelSize& size) {
    return size.sector ? size.sector->flat() : size.size;
}

double narrowing(const LabelSize& size) {
    return size.sector ? size.sector->inner / size.sector->radius_at(flat_size(size).height / 2) : 1;
}

std::shared_ptr<const DisplayList> place_side(const Design& design, const Box& root, const Item& item,
                                              const LabelSize& label, const Typesetter& typesetter,
                                              Diagnostics& diagnostics) {
    const Size size = flat_size(label);
    auto list = std::make_shared<DisplayList>();
    list->size = size;
    // Punched, folded and stuck with the front up: marks on a back that lands off its front would stay to be seen.
    const bool is_back = design.back && &root == &*design.back;
    std::vector<Forbidden> forbidden;
    const auto forbid = [&](Rect rect, const std::string& what) {
        forbidden.push_back({is_back ? mirrored(rect, size) : rect, what});
    };
    const auto mark = [&](DisplayItem drawn) {
        if (!is_back) list->items.push_back(std::move(drawn));
    };
    for (const Hole& hole : design.holes) {
        const Length clear = is_back ? larger(hole.clear, back_play) : hole.clear;
        forbid(grown(hole_rect(hole, size), clear), "a hole or too close to it");
        for (DisplayItem& drawn : draw_hole(hole, size))
            mark(std::move(drawn));
    }
    for (const Fold& fold : design.folds) {
        if (const auto at = required(fold.at, item, diagnostics)) {
            mark(draw_fold(fold.from, *at, size));
            forbid(fold_line(fold.from, *at, size), "a fold");
        }
    }
    if (design.overlap) {
        if (const auto recorded = required(design.overlap->depth, item, diagnostics)) {
            const Length depth = *recorded * narrowing(label);
            mark(draw_overlap(design.overlap->edge, depth, size));
            forbid(edge_strip(design.overlap->edge, depth, size), "the strip that is stuck over");
        }
    }
    auto filled = fill(root, item.facts);
    if (!filled) return list;
    mark_look_alikes(*filled);
    Placement placement = best_placement(*filled, size, design.shape, typesetter, item.facts.ink());
    check_label(design, item, size, placement, forbidden, diagnostics);
    check_sharpness(placement, diagnostics);
    if (is_back) check_play(design, item, size, placement, diagnostics);
    for (DisplayItem& drawn : placement.list.items)
        list->items.push_back(std::move(drawn));
    if (label.sector) *list = bend(*list, *label.sector);
    return list;
}

// A label of this size round an arc on which its middle lies.
std::optional<Sector> sector_of(Size size, Length arc, const Item& item, Diagnostics& diagnostics) {
    const Length radius = arc < Length{} ? -arc : arc;
    const Length half = size.height / 2;
    const Sector sector{radius - half, radius + half, size.width / radius, arc > Length{}};
    if (half < radius && sector.angle < 1.9 * std::numbers::pi) return sector;
    diagnostics.error(item.spot,
                      in_quotes(item.id) + ": a label of " + to_string(size.width) + " × " + to_string(size.height) +
                          " cannot go round an arc of " + to_string(radius),
                      "check the measures recorded for it, or the arc in the layout");
    return std::nullopt;
}

} // namespace

std::optional<LabelSize> label_size(const Design& design, const Item& item, Diagnostics& diagnostics) {
    const auto width = required(design.shape.width, item, diagnostics);
    const auto height = required(design.shape.height, item, diagnostics);
    if (!width || !height) return std::nullopt;
    warn_if_below(design.shape.least_width, *width, "wide", design, item, diagnostics);
    warn_if_below(design.shape.least_height, *height, "high", design, item, diagnostics);
    const Size size{*width, *height};
    const auto arc = design.shape.arc ? resolved(*design.shape.arc, item.facts) : std::nullopt;
    if (!arc) return LabelSize{size, std::nullopt};
    const auto sector = sector_of(size, *arc, item, diagnostics);
    if (!sector) return std::nullopt;
    return LabelSize{sector->bounds(), sector};
}

PlacedLabel place_label(const Design& design, const Item& item, const LabelSize& size, const Typesetter& typesetter,
                        Diagnostics& diagnostics) {
    PlacedLabel label;
    label.front = place_side(design, design.front, item, size, typesetter, diagnostics);
    if (design.back) label.back = place_side(design, *design.back, item, size, typesetter, diagnostics);
    return label;
}

std::string dump_boxes(const Design& design, const Item& item, Size size, const Typesetter& typesetter) {
    const auto filled = fill(design.front, item.facts);
    if (!filled) return {};
    std::string text;
    for (const PlacedBox& box : best_placement(*filled, size, design.shape, typesetter, item.facts.ink()).boxes) {
        text += std::string(static_cast<std::size_t>(box.depth) * 2, ' ') + box.kind + " " + to_string(box.rect) + "\n";
    }
    return text;
}

} // namespace dyeleaf
