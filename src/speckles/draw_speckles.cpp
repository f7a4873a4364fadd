#include "speckles/draw_speckles.h"

#include "colour/contrast.h"
#include "display/digest.h"
#include "speckles/scatter.h"
#include "speckles/spots.h"

#include <cmath>
#include <memory>
#include <utility>

namespace dyeleaf {

namespace {

constexpr Rgb paper{1, 1, 1};
constexpr Rgb outline{0.45, 0.45, 0.45};
constexpr Length hairline = pt(0.35);

std::uint64_t seed_of(const std::string& dye_id) {
    Digest digest;
    digest.add(dye_id);
    return digest.value();
}

// The specks that leave ink in a window of `size`, with its own corner as origin; the tile's middle lies at `middle`.
std::vector<Speck> seen_in(Size size, Point middle, const Speckled& speckled) {
    const Length reach = widest_reach(speckled);
    const Rect window = grown({{}, size}, reach);
    const Point corner = middle - Point{tile_side / 2, tile_side / 2};
    const auto first = [](Length least, Length from) {
        return static_cast<int>(std::floor((least - from) / tile_side));
    };
    std::vector<Speck> seen;
    const std::vector<Speck> specks = scatter(seed_of(speckled.dye_id), speckled.spread, speckled.density);
    for (int row = first(window.top(), corner.y); corner.y + tile_side * row < window.bottom(); ++row) {
        for (int column = first(window.left(), corner.x); corner.x + tile_side * column < window.right(); ++column) {
            const Point by = corner + Point{tile_side * column, tile_side * row};
            for (Speck speck : specks) {
                speck.at = speck.at + by;
                const bool inside = speck.at.x >= window.left() && speck.at.x <= window.right() &&
                                    speck.at.y >= window.top() && speck.at.y <= window.bottom();
                if (inside) seen.push_back(speck);
            }
        }
    }
    return seen;
}

// Darkened as far as it takes to be seen on paper as a line.
Rgb as_line(Rgb colour) {
    while (contrast_ratio(colour, paper) < 2)
        colour = {colour.red * 0.9, colour.green * 0.9, colour.blue * 0.9};
    return colour;
}

void outline_layer(const SpotLayer& layer, std::vector<DisplayItem>& items) {
    std::vector<Length> dash;
    if (layer.part == SpotLayer::Part::veil || layer.part == SpotLayer::Part::halo) dash = {mm(0.5), mm(0.5)};
    items.emplace_back(StrokePath{layer.path, as_line(layer.colour), hairline, std::move(dash)});
}

DisplayItem hatching(Size size, Rgb colour, Path clip) {
    constexpr Length pitch = mm(0.85);
    auto lines = std::make_shared<DisplayList>();
    lines->size = size;
    Path strokes;
    for (Length x = -size.height; x < size.width; x += pitch) {
        strokes.emplace_back(MoveTo{{x, size.height}});
        strokes.emplace_back(LineTo{{x + size.height, Length{}}});
    }
    lines->items.emplace_back(StrokePath{std::move(strokes), colour, mm(0.22), {}});
    return Group{std::move(lines), {}, std::move(clip)};
}

// Specks whose colour cannot be shown: dashed where it is not recorded, hatched where no ink has it.
void add_unseen(const Speckled& speckled, const SpotLayer& specks, Size size, Ink ink,
                std::vector<DisplayItem>& items) {
    std::vector<Length> dash;
    if (speckled.dye == Speckled::Dye::not_recorded) {
        dash = {mm(0.5), mm(0.4)};
    } else {
        items.push_back(hatching(size, ink.mono || ink.sparing ? outline : speckled.colour, specks.path));
    }
    items.emplace_back(StrokePath{specks.path, outline, hairline, std::move(dash)});
}

std::vector<DisplayItem> inked_layers(const Speckled& speckled, const std::vector<SpotLayer>& layers, Size size,
                                      Ink ink, Rgb ground) {
    std::vector<DisplayItem> items;
    for (const SpotLayer& layer : layers) {
        const bool is_halo = layer.part == SpotLayer::Part::halo;
        const bool is_speck = layer.part == SpotLayer::Part::speck;
        if (!is_halo && speckled.dye != Speckled::Dye::shown) {
            if (is_speck) add_unseen(speckled, layer, size, ink, items);
        } else if (ink.sparing) {
            outline_layer(layer, items);
        } else {
            items.emplace_back(FillPath{layer.path, layer.colour});
            if (ink.mono && is_speck && contrast_ratio(layer.colour, ground) < 1.5)
                items.emplace_back(StrokePath{layer.path, outline, hairline, {}});
        }
    }
    return items;
}

} // namespace

std::vector<DisplayItem> draw_speckles(const Speckled& speckled, Ink ink, Rect rect, Rect inked, Length corner) {
    const Rgb ground = ink.sparing ? paper : speckled.ground.value_or(paper);
    const auto specks = seen_in(inked.size, rect.centre() - inked.origin, speckled);
    auto yarn = std::make_shared<DisplayList>();
    yarn->size = inked.size;
    yarn->items = inked_layers(speckled, spot_layers(speckled, specks, ground), inked.size, ink, ground);

    std::vector<DisplayItem> items;
    if (ground != paper) items.emplace_back(FillPath{rounded_path(inked, corner), ground});
    items.emplace_back(Group{std::move(yarn), Transform::move(inked.origin), rounded_path({{}, inked.size}, corner)});
    if (contrast_ratio(ground, paper) < 1.25)
        items.emplace_back(StrokePath{rounded_path(grown(inked, hairline * -0.5), corner), outline, hairline, {}});
    return items;
}

} // namespace dyeleaf
