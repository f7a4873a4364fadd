#include "layout/check_label.h"

#include "base/number.h"
#include "base/words.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <optional>

namespace dyeleaf {

namespace {

std::string sample(const std::string& text) {
    return in_quotes(shortened(text, 40));
}

std::string in_millimetres(Length length) {
    return decimal(std::ceil(length.in_mm() * 10) / 10, 1) + " mm";
}

bool is_caution(const Zone& zone) {
    return zone.kind == Zone::Kind::caution;
}

// What must come out whole: a warning would not do.
bool is_grave(const Zone& zone) {
    return is_caution(zone) || zone.kind == Zone::Kind::code;
}

std::string subject_of(const Zone& zone) {
    if (zone.kind == Zone::Kind::code) return "the code " + sample(zone.text);
    if (zone.kind == Zone::Kind::symbol) return "the symbol " + sample(zone.text);
    return (is_caution(zone) ? "the caution " : "the text ") + sample(zone.text);
}

class LabelCheck {
  public:
    LabelCheck(const Design& design, const Item& item, Size size, const Placement& placement, Diagnostics& diagnostics)
        : design_(design), item_(item), size_(size), placement_(placement), diagnostics_(diagnostics) {}

    void run(const std::vector<Forbidden>& forbidden) {
        if (cautions_are_crowded()) {
            refuse_as_too_small();
            return; // what else does not fit is of no use to know
        }
        for (const Misfit& misfit : placement_.misfits)
            note(misfit);
        note_missing_characters();
        for (const SilentPatch& patch : placement_.silent_patches)
            note(patch);
        for (std::size_t i = 0; i < placement_.zones.size(); ++i) {
            const Zone& zone = placement_.zones[i];
            if (!is_text(zone)) continue;
            check_edge(zone);
            check_forbidden(zone, forbidden);
            check_neighbours(i);
        }
    }

  private:
    void note(bool grave, const Box* box, const std::string& what, const std::string& help) {
        const std::string message = in_quotes(item_.id) + ": " + what;
        const Spot spot = box == nullptr ? Spot{} : box->spot;
        grave ? diagnostics_.error(spot, message, help) : diagnostics_.warning(spot, message, help);
    }

    [[nodiscard]] bool cautions_are_crowded() const {
        const auto crowded = [&](const Zone& zone) {
            return is_caution(zone) && !keeps_inside(zone, size_, design_.shape);
        };
        // A pictogram that the layout makes too small is said of the pictogram.
        const auto lacks_room = [](const Misfit& misfit) {
            return misfit.is_caution && misfit.kind != Misfit::Kind::small_symbol;
        };
        return std::ranges::any_of(placement_.misfits, lacks_room) || std::ranges::any_of(placement_.zones, crowded);
    }

    void refuse_as_too_small() {
        Length most;
        for (const Misfit& misfit : placement_.misfits)
            most = larger(most, misfit.excess);
        const std::string by = most > Length{} ? " by " + in_millimetres(most) : "";
        diagnostics_.error(item_.spot,
                           in_quotes(item_.id) + ": the label " + in_quotes(design_.name) + " of " +
                               to_string(size_.width) + " × " + to_string(size_.height) +
                               " is too small for its cautions" + by,
                           "cautions never shrink and are never left out: choose a larger label (dyeleaf layouts lists "
                           "them), or a larger jar");
    }

    // Words that name it close by are as good.
    void note(const SilentPatch& patch) {
        const Rect near_by = grown(patch.rect, mm(3));
        const bool is_said = std::ranges::any_of(placement_.zones, [&](const Zone& zone) {
            return zone.kind == Zone::Kind::words && overlap(zone, near_by) &&
                   std::ranges::any_of(patch.says, [&](const std::string& words) {
                       return zone.text.find(words) != std::string::npos;
                   });
        });
        if (is_said) return;
        const std::string& words = patch.says.front();
        if (patch.lacks == SilentPatch::Lacks::source) {
            note(false, patch.box, "a patch is too small to say " + in_quotes(words) + " on it",
                 "give the patch more room in the layout, or say so beside it");
            return;
        }
        note(false, patch.box,
             "the patch of " + in_quotes(words) +
                 " is too small for its code, and another colour here is hardly to be told from it",
             "give the patch more room in the layout, or place the code beside it");
    }

    void note(const Misfit& misfit) {
        const std::string subject = misfit.text.empty() ? "what this box holds" : "the text " + sample(misfit.text);
        const std::string excess = in_millimetres(misfit.excess);
        switch (misfit.kind) {
        case Misfit::Kind::cut:
            note(false, misfit.box, subject + " does not fit at its smallest size and is cut with …",
                 "shorten it, or give the box more width or lines in the layout");
            return;
        case Misfit::Kind::broken:
            note(false, misfit.box, subject + " is broken inside a word, even at its smallest size",
                 "shorten it, or give the box more width in the layout");
            return;
        case Misfit::Kind::too_tall:
            note(false, misfit.box, subject + " is " + excess + " too tall for its place",
                 "shorten what it holds, choose a larger layout, or give it more height in this one");
            return;
        case Misfit::Kind::too_wide:
            note(false, misfit.box, subject + " is " + excess + " too wide for its place",
                 "shorten what it holds, or give it more width in the layout");
            return;
        case Misfit::Kind::small_symbol:
            note(misfit.is_caution, misfit.box,
                 (misfit.is_caution ? "the pictogram " : "the symbol ") + sample(misfit.text) + " is " + excess +
                     " too low to be told",
                 misfit.is_caution ? "give it 14.2 mm or more, so that each side of its frame is 10 mm long"
                                   : "give it 5 mm or more");
            return;
        case Misfit::Kind::small_code:
        case Misfit::Kind::no_code: note(true, misfit.box, misfit.text, misfit.help); return;
        }
    }

    // One complaint a text, with all the characters it lacks.
    void note_missing_characters() {
        const std::vector<MissingGlyph>& all = placement_.missing;
        for (std::size_t i = 0; i < all.size();) {
            std::string characters;
            std::size_t end = i;
            for (; end < all.size() && all[end].box == all[i].box && all[end].text == all[i].text; ++end) {
                characters += (characters.empty() ? "" : " ") + all[end].character;
            }
            note(all[i].is_caution, all[i].box,
                 "no font has " + in_quotes(characters) + " in " + sample(all[i].text) + "; it is left out",
                 "write it another way, or put a font that has it into a folder called fonts beside your records");
            i = end;
        }
    }

    void check_edge(const Zone& zone) {
        if (keeps_inside(zone, size_, design_.shape)) return;
        note(zone.kind == Zone::Kind::code, zone.box,
             subject_of(zone) + " comes closer than " + to_string(design_.shape.safe) + " to the edge",
             "give the label a larger padding, or shorten what it holds");
    }

    void check_forbidden(const Zone& zone, const std::vector<Forbidden>& forbidden) {
        for (const Forbidden& place : forbidden) {
            if (!overlap(zone, place.rect)) continue;
            note(is_grave(zone), zone.box, subject_of(zone) + " lies on " + place.what,
                 "move the box, or move what it lies on");
        }
    }

    // What a caution must not share its place with; a background is for it to stand on, so only a later one covers it.
    // A code stands on white of its own: what it hides are words, and the rest matters where it lies on top.
    static std::optional<std::string> disturbs(const Zone& zone, const Zone& other, bool later) {
        const bool hidden = zone.kind == Zone::Kind::code && !later && !is_text(other);
        if (hidden) return std::nullopt;
        switch (other.kind) {
        case Zone::Kind::code: return "the code " + sample(other.text);
        case Zone::Kind::words: return "the text " + sample(other.text);
        case Zone::Kind::symbol: return "the symbol " + sample(other.text);
        case Zone::Kind::caution: return later ? std::optional{"the caution " + sample(other.text)} : std::nullopt;
        case Zone::Kind::colour: return "a colour";
        case Zone::Kind::picture: return "a picture";
        case Zone::Kind::background: return later ? std::optional<std::string>{"a background"} : std::nullopt;
        case Zone::Kind::hole: return std::nullopt;
        }
        return std::nullopt;
    }

    void check_neighbours(std::size_t index) {
        const Zone& zone = placement_.zones[index];
        for (std::size_t i = 0; i < placement_.zones.size(); ++i) {
            const Zone& other = placement_.zones[i];
            if (i == index || !overlap(zone, other)) continue;
            if (other.kind == Zone::Kind::hole) {
                note(is_grave(zone), zone.box, subject_of(zone) + " lies on a hole", "move one of the two");
            }
            if (!is_grave(zone)) continue;
            const bool later = i > index;
            if (const auto what = disturbs(zone, other, later)) {
                note(true, zone.box, subject_of(zone) + (later ? " is covered by " : " lies on ") + *what,
                     is_caution(zone) ? "cautions stand on plain paper, each in its own place"
                                      : "codes stand in a place of their own, white all round");
            }
        }
    }

    const Design& design_;
    const Item& item_;
    Size size_;
    const Placement& placement_;
    Diagnostics& diagnostics_;
};

// The inside of an ellipse, less `safe` all round.
bool inside_ellipse(Point p, Size size, Length safe) {
    const double across = (p.x - size.width / 2) / (size.width / 2 - safe);
    const double down = (p.y - size.height / 2) / (size.height / 2 - safe);
    return across * across + down * down <= 1.0 + 1e-6;
}

// A cut across a corner is as far from the corner as its two ends together are from the sides.
bool inside_clipped_corners(Point p, Size size, const Shape& shape) {
    if (shape.clipped <= Length{}) return true;
    const Length from_side = smaller(p.x, size.width - p.x);
    return fits(shape.clipped + shape.safe * std::numbers::sqrt2, from_side + p.y);
}

} // namespace

bool is_text(const Zone& zone) {
    return zone.kind == Zone::Kind::words || zone.kind == Zone::Kind::caution || zone.kind == Zone::Kind::symbol ||
           zone.kind == Zone::Kind::code;
}

bool keeps_inside(const Zone& zone, Size size, const Shape& shape) {
    const Rect safe = shrunk({{}, size}, Insets::all(shape.safe));
    const auto is_inside = [&](Point corner) {
        if (shape.round) return inside_ellipse(corner, size, shape.safe);
        return contains(safe, {corner, {}}) && inside_clipped_corners(corner, size, shape);
    };
    const auto all_inside = [&](const Quad& quad) { return std::ranges::all_of(quad.corners, is_inside); };
    return zone.letters.empty() ? all_inside(quad_of({}, zone.rect)) : std::ranges::all_of(zone.letters, all_inside);
}

void check_label(const Design& design, const Item& item, Size size, const Placement& placement,
                 const std::vector<Forbidden>& forbidden, Diagnostics& diagnostics) {
    LabelCheck{design, item, size, placement, diagnostics}.run(forbidden);
}

} // namespace dyeleaf
