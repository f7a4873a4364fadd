// A rectangle in a photograph, as somebody wrote it who looked at the picture upright.
#pragma once

#include "base/quantity.h"
#include "pictures/picture_file.h"
#include "pictures/unpack_areas.h"

#include <optional>
#include <variant>

namespace dyeleaf {

template <class Unit> struct Between {
    Unit from{}, to{};
    friend bool operator==(const Between&, const Between&) = default;
};

// From the left or from the upper edge: in per cent of the whole side, or in pixels.
using Stretch = std::variant<Between<Percent>, Between<int>>;

struct PhotoArea {
    Stretch across, down;
    friend bool operator==(const PhotoArea&, const PhotoArea&) = default;
};

// Where it ends, as far as it is written in pixels: what the picture must have. 0: nothing.
Pixels pixels_needed(const PhotoArea& area);
// Requires: a picture that has these. It may come out with no pixel at all.
PixelArea pixels_of(const PhotoArea& area, Pixels seen);

bool overlap(const PixelArea& a, const PixelArea& b);

} // namespace dyeleaf
