#include "layout/patch.h"

#include "facts/colour.h"

#include <memory>

namespace dyeleaf {

namespace {

constexpr Rgb paper{1, 1, 1};
constexpr Rgb outline{0.45, 0.45, 0.45};
constexpr Length hairline = pt(0.35);

// Light enough to lose its edge on white paper: less than 1.25 to 1 in contrast (common practice).
bool fades_into_paper(Rgb colour) {
    return contrast_ratio(colour, paper) < 1.25;
}

StrokePath edge(Rect rect, Length corner, std::vector<Length> dash = {}) {
    const Rect inside = grown(rect, hairline * -0.5);
    return {rounded_path(inside, corner), outline, hairline, std::move(dash)};
}

// Cut along the same slant whether or not the patch bleeds at that corner.
Path cut_corner_path(Rect rect, Rect inked) {
    const Length cut = smaller(rect.size.width, rect.size.height) * 0.3;
    const Length slant = cut + (inked.right() - rect.right()) + (inked.bottom() - rect.bottom());
    return {MoveTo{inked.origin},
            LineTo{{inked.right(), inked.top()}},
            LineTo{{inked.right(), inked.bottom() - slant}},
            LineTo{{inked.right() - slant, inked.bottom()}},
            LineTo{{inked.left(), inked.bottom()}},
            ClosePath{}};
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

} // namespace

std::vector<DisplayItem> draw_patch(const Patch& patch, Rect rect, Rect inked, Length corner) {
    std::vector<DisplayItem> items;
    switch (patch.kind) {
    case Patch::Kind::recorded:
        items.emplace_back(FillPath{rounded_path(inked, corner), patch.colour});
        if (fades_into_paper(patch.colour)) items.emplace_back(edge(inked, corner));
        break;
    case Patch::Kind::estimated:
        items.emplace_back(FillPath{cut_corner_path(rect, inked), patch.colour});
        if (fades_into_paper(patch.colour)) {
            items.emplace_back(StrokePath{cut_corner_path(rect, inked), outline, hairline, {}});
        }
        break;
    case Patch::Kind::not_recorded: items.emplace_back(edge(rect, corner, {mm(0.9), mm(0.7)})); break;
    case Patch::Kind::not_printable:
        items.emplace_back(hatching(inked, corner, patch.colour));
        items.emplace_back(edge(inked, corner));
        break;
    }
    return items;
}

Rgb ground_of(const Patch& patch) {
    const bool solid = patch.kind == Patch::Kind::recorded || patch.kind == Patch::Kind::estimated;
    return solid ? patch.colour : paper;
}

} // namespace dyeleaf
