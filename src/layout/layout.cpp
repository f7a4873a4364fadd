#include "layout/layout.h"

#include "base/number.h"
#include "base/words.h"
#include "layout/fill.h"
#include "layout/marks.h"
#include "layout/place.h"

#include <algorithm>
#include <array>
#include <utility>

namespace dyeleaf {

namespace {

std::optional<Length> resolved(const LengthOrFact& length, const Facts& facts) {
    if (const auto* fixed = std::get_if<Length>(&length.value)) return *fixed;
    const auto value = facts.find(std::get<std::string>(length.value));
    const auto* fact = value ? std::get_if<Length>(&*value) : nullptr;
    return fact == nullptr ? std::nullopt : std::optional{*fact};
}

std::optional<Length> required(const LengthOrFact& length, const Item& item, Diagnostics& diagnostics) {
    const auto value = resolved(length, item.facts);
    if (!value) {
        diagnostics.error(item.spot,
                          in_quotes(item.id) + " does not say what the layout needs for its size (" +
                              std::get<std::string>(length.value) + ")",
                          "record it, or leave " + in_quotes(item.id) + " out with --only");
        return std::nullopt;
    }
    if (*value > Length{}) return value;
    diagnostics.error(item.spot, in_quotes(item.id) + " gives the label a size of " + to_string(*value),
                      "check the measures recorded for it");
    return std::nullopt;
}

Spot spot_of(const Box* box) {
    return box == nullptr ? Spot{} : box->spot;
}

constexpr const char* too_small =
    "cautions never shrink, so this label is too small for its own: use a larger label or another layout";

std::string sample(const std::string& text) {
    return in_quotes(shortened(text, 40));
}

// A problem of one label: at the box in the layout, naming the record.
class Complaints {
  public:
    Complaints(const Item& item, Diagnostics& diagnostics) : item_(item), diagnostics_(diagnostics) {}

    void note(bool grave, const Box* box, const std::string& what, const std::string& help) {
        const std::string message = in_quotes(item_.id) + ": " + what;
        grave ? diagnostics_.error(spot_of(box), message, help) : diagnostics_.warning(spot_of(box), message, help);
    }

    void note(const Misfit& misfit) {
        const std::string who = misfit.is_caution ? "the caution " : "the text ";
        const std::string subject = misfit.text.empty() ? "what this box holds" : who + sample(misfit.text);
        const std::string excess = decimal(misfit.excess.in_mm(), 1) + " mm";
        switch (misfit.kind) {
        case Misfit::Kind::cut:
            note(misfit.is_caution, misfit.box, subject + " does not fit at its smallest size and is cut with …",
                 "shorten it, or give the box more width or lines in the layout");
            return;
        case Misfit::Kind::too_tall:
            note(misfit.is_caution, misfit.box, subject + " is " + excess + " too tall for its place",
                 misfit.is_caution ? too_small : "shorten what it holds, or give it more height in the layout");
            return;
        case Misfit::Kind::too_wide:
            note(misfit.is_caution, misfit.box, subject + " is " + excess + " too wide for its place",
                 misfit.is_caution ? too_small : "shorten what it holds, or give it more width in the layout");
            return;
        }
    }

    void note(const MissingGlyph& missing) {
        note(missing.is_caution, missing.box,
             "no font has the character " + in_quotes(missing.character) + " in " + sample(missing.text) +
                 "; it is left out",
             "write it another way, or put a font that has it into a folder called fonts beside your records");
    }

  private:
    const Item& item_;
    Diagnostics& diagnostics_;
};

// The inside of an ellipse or rectangle of `size`, less `safe` all round.
bool inside_trim(Rect rect, Size size, bool round, Length safe) {
    if (!round) return contains(shrunk({{}, size}, Insets::all(safe)), rect);
    const Length rx = size.width / 2 - safe;
    const Length ry = size.height / 2 - safe;
    const auto in_ellipse = [&](Length x, Length y) {
        const double across = (x - size.width / 2) / rx;
        const double down = (y - size.height / 2) / ry;
        return across * across + down * down <= 1.0 + 1e-6;
    };
    return in_ellipse(rect.left(), rect.top()) && in_ellipse(rect.right(), rect.top()) &&
           in_ellipse(rect.left(), rect.bottom()) && in_ellipse(rect.right(), rect.bottom());
}

bool is_text(const Zone& zone) {
    return zone.kind == Zone::Kind::words || zone.kind == Zone::Kind::caution;
}

bool inside_trim(const Zone& zone, Size size, const Shape& shape) {
    return inside_trim(zone.rect, size, shape.round, shape.safe);
}

struct Forbidden {
    Rect rect;
    std::string what;
};

void check_zones(const Design& design, Size size, const Placement& placement, const std::vector<Forbidden>& forbidden,
                 Complaints& complaints) {
    for (const Zone& zone : placement.zones) {
        if (!is_text(zone)) continue;
        const bool caution = zone.kind == Zone::Kind::caution;
        const std::string subject = (caution ? "the caution " : "the text ") + sample(zone.text);
        if (!inside_trim(zone, size, design.shape)) {
            complaints.note(caution, zone.box,
                            subject + " comes closer than " + to_string(design.shape.safe) + " to the edge",
                            caution ? too_small : "give the label a larger padding, or shorten what it holds");
        }
        for (const Forbidden& place : forbidden) {
            if (overlap(zone.rect, place.rect)) {
                complaints.note(caution, zone.box, subject + " lies on " + place.what,
                                "move the box, or move what it lies on");
            }
        }
        for (const Zone& other : placement.zones) {
            if (&other == &zone || !overlap(zone.rect, other.rect)) continue;
            if (other.kind == Zone::Kind::hole) {
                complaints.note(caution, zone.box, subject + " lies on a hole", "move one of the two");
            }
            if (caution && other.kind == Zone::Kind::colour) {
                complaints.note(true, zone.box, subject + " lies on a colour", "cautions stand on plain paper");
            }
            if (caution && other.kind == Zone::Kind::words) {
                complaints.note(true, zone.box, subject + " lies on the text " + sample(other.text),
                                "give each its own place");
            }
        }
    }
}

// A text that is cut is at its smallest already, and shrinking its neighbours would not help it.
bool wants_more_room(const Misfit& misfit) {
    return misfit.kind != Misfit::Kind::cut;
}

// Tries the label with its texts at full size, then ever smaller, until all of it fits.
Placement best_placement(const FilledBox& box, Size size, const Shape& shape, const Typesetter& typesetter) {
    constexpr std::array levels = {0.0, 0.25, 0.5, 0.75, 1.0};
    const auto fits_trim = [&](const Zone& zone) { return !is_text(zone) || inside_trim(zone, size, shape); };
    Placement placement;
    for (const double level : levels) {
        const Trial trial{&typesetter, level};
        placement = place(box, size, shape.bleed, trial);
        if (std::ranges::none_of(placement.misfits, wants_more_room) && std::ranges::all_of(placement.zones, fits_trim))
            break;
    }
    return placement;
}

std::shared_ptr<const DisplayList> place_side(const Design& design, const Box& root, const Item& item, Size size,
                                              const Typesetter& typesetter, Diagnostics& diagnostics) {
    auto list = std::make_shared<DisplayList>();
    list->size = size;
    std::vector<Forbidden> forbidden;
    for (const Hole& hole : design.holes) {
        forbidden.push_back({grown(hole_rect(hole, size), hole.clear), "a hole or too close to it"});
        for (DisplayItem& mark : draw_hole(hole, size))
            list->items.push_back(std::move(mark));
    }
    for (const Fold& fold : design.folds) {
        if (const auto at = required(fold.at, item, diagnostics)) {
            list->items.push_back(draw_fold(fold.from, *at, size));
            forbidden.push_back({fold_line(fold.from, *at, size), "a fold"});
        }
    }
    if (design.overlap) {
        if (const auto depth = required(design.overlap->depth, item, diagnostics)) {
            list->items.push_back(draw_overlap(design.overlap->edge, *depth, size));
            forbidden.push_back({edge_strip(design.overlap->edge, *depth, size), "the strip that is stuck over"});
        }
    }
    const auto filled = fill(root, item.facts);
    if (!filled) return list;
    Placement placement = best_placement(*filled, size, design.shape, typesetter);
    Complaints complaints{item, diagnostics};
    for (const Misfit& misfit : placement.misfits)
        complaints.note(misfit);
    for (const MissingGlyph& missing : placement.missing)
        complaints.note(missing);
    check_zones(design, size, placement, forbidden, complaints);
    for (DisplayItem& drawn : placement.list.items)
        list->items.push_back(std::move(drawn));
    return list;
}

} // namespace

std::optional<Size> label_size(const Design& design, const Item& item, Diagnostics& diagnostics) {
    const auto width = required(design.shape.width, item, diagnostics);
    const auto height = required(design.shape.height, item, diagnostics);
    if (!width || !height) return std::nullopt;
    return Size{*width, *height};
}

PlacedLabel place_label(const Design& design, const Item& item, Size size, const Typesetter& typesetter,
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
    for (const PlacedBox& box : best_placement(*filled, size, design.shape, typesetter).boxes) {
        text += std::string(static_cast<std::size_t>(box.depth) * 2, ' ') + box.kind + " " + to_string(box.rect) + "\n";
    }
    return text;
}

} // namespace dyeleaf
