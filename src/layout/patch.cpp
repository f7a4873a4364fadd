#include "layout/patch.h"

#include "colour/contrast.h"
#include "colour/spaces.h"
#include "layout/hue_pattern.h"

#include <algorithm>
#include <memory>
#include <utility>

namespace dyeleaf {

namespace {

constexpr Rgb paper{1, 1, 1};
constexpr Rgb outline{0.45, 0.45, 0.45};
constexpr Length hairline = pt(0.35);

// Light enough to lose its edge on white paper: less than 1.25 to 1 in contrast (common practice).
bool fades_into_paper(Rgb colour) {
    return contrast_ratio(colour, paper) < 1.25;
}

// Dark enough to be taken for black ink, which on paper is no darker: less than 1.6 to 1 in contrast, L* of about 20
// (common practice).
bool fades_into_black(Rgb colour) {
    return contrast_ratio(colour, Rgb{}) < 1.6;
}

// A cross of two strokes, in the upper right corner.
Rect plus_place(Rect rect) {
    const Length arm = smaller(larger(smaller(rect.size.width, rect.size.height) * 0.28, mm(0.9)), mm(1.8));
    const Length inset = arm * 0.5;
    return {{rect.right() - inset - arm, rect.top() + inset}, {arm, arm}};
}

// The square that the slant cuts through.
Rect cut_corner_place(Rect rect) {
    const Length cut = smaller(rect.size.width, rect.size.height) * 0.3;
    return {{rect.right() - cut, rect.bottom() - cut}, {cut, cut}};
}

StrokePath edge(Rect rect, Length corner, std::vector<Length> dash = {}) {
    const Rect inside = grown(rect, hairline * -0.5);
    return {rounded_path(inside, corner), outline, hairline, std::move(dash)};
}

// Cut along the same slant whether or not the patch bleeds at that corner.
Path cut_corner_path(Rect rect, Rect inked) {
    const Length slant =
        cut_corner_place(rect).size.width + (inked.right() - rect.right()) + (inked.bottom() - rect.bottom());
    if (const Length above = slant - inked.size.height; above > Length{}) { // it leaves by the top of a thin band
        return {MoveTo{inked.origin}, LineTo{{inked.right() - above, inked.top()}},
                LineTo{{inked.right() - slant, inked.bottom()}}, LineTo{{inked.left(), inked.bottom()}}, ClosePath{}};
    }
    return {MoveTo{inked.origin},
            LineTo{{inked.right(), inked.top()}},
            LineTo{{inked.right(), inked.bottom() - slant}},
            LineTo{{inked.right() - slant, inked.bottom()}},
            LineTo{{inked.left(), inked.bottom()}},
            ClosePath{}};
}

Path crossing_path(Rect rect) {
    return {MoveTo{rect.origin}, LineTo{{rect.right(), rect.bottom()}}, MoveTo{{rect.right(), rect.top()}},
            LineTo{{rect.left(), rect.bottom()}}};
}

Group hatching(Rect rect, Length corner, Rgb colour) {
    constexpr Length pitch = mm(1.2);
    auto lines = std::make_shared<DisplayList>();
    lines->size = rect.size;
    Path strokes;
    for (Length x = -rect.size.height; x < rect.size.width; x += pitch) {
        strokes.emplace_back(MoveTo{{x, rect.size.height}});
        strokes.emplace_back(LineTo{{x + rect.size.height, Length{}}});
    }
    lines->items.emplace_back(StrokePath{std::move(strokes), colour, mm(0.45), {}});
    return {lines, Transform::move(rect.origin), rounded_path({{}, rect.size}, corner)};
}

// A patch with a colour, as its kind asks for it.
class Sample {
  public:
    Sample(const Patch& patch, Rect rect, Rect inked, Length corner)
        : colour_(patch.colour), is_estimated_(patch.kind == Patch::Kind::estimated), rect_(rect), inked_(inked),
          corner_(corner) {}

    [[nodiscard]] std::vector<DisplayItem> solid() const {
        std::vector<DisplayItem> items{FillPath{shape({}), colour_}};
        if (fades_into_paper(colour_)) items.emplace_back(outlined(outline));
        if (fades_into_black(colour_) && !bleeds()) items.emplace_back(keyline());
        return items;
    }

    [[nodiscard]] std::vector<DisplayItem> outlines() const { return {outlined(seen(colour_))}; }

    // Over the solid colour, black or white.
    [[nodiscard]] DisplayItem pattern_in_mono() const { return pattern(black_or_white_on(colour_), mm(0.2)); }

    // On bare paper: heavier for deeper colours, 0.2 to 0.5 mm.
    [[nodiscard]] DisplayItem pattern_on_paper() const {
        const double depth = 1 - std::clamp(to_lab(colour_).lightness / 100, 0.0, 1.0);
        return pattern(seen(colour_), mm(0.2) + mm(0.3) * depth);
    }

    // On what the patch was drawn with, and clear of its pattern.
    [[nodiscard]] std::vector<DisplayItem> plus(Rgb ground) const {
        const Rect place = plus_place(rect_);
        const Point middle = place.centre();
        const Length line = larger(place.size.width * 0.17, mm(0.2));
        const Path cross{MoveTo{{place.left(), middle.y}}, LineTo{{place.right(), middle.y}},
                         MoveTo{{middle.x, place.top()}}, LineTo{{middle.x, place.bottom()}}};
        return {FillPath{circle_path(middle, place.size.width * 0.75), ground},
                StrokePath{cross, black_or_white_on(ground), line, {}}};
    }

  private:
    // Off the label: a line along the trim would be cut askew.
    [[nodiscard]] bool bleeds() const {
        return !near(inked_.size.width, rect_.size.width) || !near(inked_.size.height, rect_.size.height);
    }
    // Light enough to stand out from the patch, thick enough not to be filled with ink.
    [[nodiscard]] StrokePath keyline() const {
        constexpr Length inset = mm(0.55);
        constexpr Rgb light{0.85, 0.85, 0.85};
        const Rect inside = grown(rect_, -inset);
        return {is_estimated_ ? cut_corner_path(inside, inside)
                              : rounded_path(inside, larger(corner_ - inset, Length{})),
                light,
                pt(0.5),
                {}};
    }
    // With the patch's own corner at the origin moved by `by`.
    [[nodiscard]] Path shape(Point by) const {
        const Rect inked{inked_.origin - by, inked_.size};
        return is_estimated_ ? cut_corner_path({rect_.origin - by, rect_.size}, inked) : rounded_path(inked, corner_);
    }
    [[nodiscard]] StrokePath outlined(Rgb colour) const {
        return {
            is_estimated_ ? shape({}) : rounded_path(grown(inked_, hairline * -0.5), corner_), colour, hairline, {}};
    }
    [[nodiscard]] DisplayItem pattern(Rgb colour, Length line) const {
        auto list = hue_pattern(colour_, inked_.size, colour, line);
        return Group{std::make_shared<const DisplayList>(std::move(list)), Transform::move(inked_.origin),
                     shape(inked_.origin)};
    }
    // Darkened as far as it takes to be seen on paper as a line.
    static Rgb seen(Rgb colour) {
        while (contrast_ratio(colour, paper) < 2)
            colour = {colour.red * 0.9, colour.green * 0.9, colour.blue * 0.9};
        return colour;
    }

    Rgb colour_;
    bool is_estimated_;
    Rect rect_, inked_;
    Length corner_;
};

std::vector<DisplayItem> draw_sample(const Sample& sample, PatchDress dress) {
    std::vector<DisplayItem> items = dress.ink.sparing ? sample.outlines() : sample.solid();
    if (dress.is_bare && dress.ink.sparing) {
        items.insert(items.begin(), sample.pattern_on_paper());
    } else if (dress.is_bare && dress.ink.mono) {
        items.push_back(sample.pattern_in_mono());
    }
    return items;
}

std::vector<DisplayItem> draw_colour(const Patch& patch, const Sample& sample, PatchDress dress) {
    std::vector<DisplayItem> items = draw_sample(sample, dress);
    if (!patch.beyond_print) return items;
    for (DisplayItem& item : sample.plus(ground_of(patch, dress.ink)))
        items.push_back(std::move(item));
    return items;
}

} // namespace

std::vector<DisplayItem> draw_patch(const Patch& patch, PatchDress dress, Rect rect, Rect inked, Length corner) {
    switch (patch.kind) {
    case Patch::Kind::recorded:
    case Patch::Kind::estimated: return draw_colour(patch, {patch, rect, inked, corner}, dress);
    case Patch::Kind::not_recorded: return {edge(rect, corner, {mm(0.9), mm(0.7)})};
    case Patch::Kind::not_printable:
        if (dress.ink.mono || dress.ink.sparing)
            return {StrokePath{crossing_path(rect), outline, hairline, {}}, edge(inked, corner)};
        return {hatching(inked, corner, patch.colour), edge(inked, corner)};
    }
    return {};
}

std::vector<Rect> marks_on(const Patch& patch, Rect rect) {
    std::vector<Rect> marks;
    if (patch.beyond_print) marks.push_back(plus_place(rect));
    if (patch.kind == Patch::Kind::estimated) marks.push_back(cut_corner_place(rect));
    return marks;
}

Rgb ground_of(const Patch& patch, Ink ink) {
    const bool solid = patch.kind == Patch::Kind::recorded || patch.kind == Patch::Kind::estimated;
    return solid && !ink.sparing ? patch.colour : paper;
}

} // namespace dyeleaf
