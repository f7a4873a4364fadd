#include "photographs/photo_area.h"

#include <cmath>

namespace dyeleaf {

namespace {

Between<int> pixels_along(const Stretch& stretch, int side) {
    if (const auto* pixels = std::get_if<Between<int>>(&stretch)) return *pixels;
    const auto& shares = std::get<Between<Percent>>(stretch);
    const auto pixel = [&](Percent share) { return static_cast<int>(std::lround(share.number() / 100 * side)); };
    return {pixel(shares.from), pixel(shares.to)};
}

int end_of(const Stretch& stretch) {
    const auto* pixels = std::get_if<Between<int>>(&stretch);
    return pixels == nullptr ? 0 : pixels->to;
}

} // namespace

Pixels pixels_needed(const PhotoArea& area) {
    return {end_of(area.across), end_of(area.down)};
}

PixelArea pixels_of(const PhotoArea& area, Pixels seen) {
    const auto [left, right] = pixels_along(area.across, seen.across);
    const auto [top, bottom] = pixels_along(area.down, seen.down);
    return {left, top, right - left, bottom - top};
}

bool overlap(const PixelArea& a, const PixelArea& b) {
    const auto meet = [](int from, int length, int other_from, int other_length) {
        return from < other_from + other_length && other_from < from + length;
    };
    return meet(a.left, a.across, b.left, b.across) && meet(a.top, a.down, b.top, b.down);
}

} // namespace dyeleaf
