// What colour a swatch has in a photograph, by something beside it that has none.
#pragma once

#include "base/colour.h"
#include "base/quantity.h"
#include "colour/xyz.h"
#include "pictures/unpack_areas.h"

#include <optional>
#include <string>
#include <vector>

namespace dyeleaf {

// The pixels of an area, as coded and as the light that they stand for (Y of the picture's white is 1). In rows.
struct PhotoSample {
    int across = 0, down = 0;
    std::vector<CodedPixel> coded;
    std::vector<Xyz> light;
};

// Differences are ΔE00, after the picture has been balanced.
struct PhotoReading {
    Lab colour;
    double spread = 0;           // from that colour, half of the swatch's pixels differ more
    double spread_of_hue = 0;    // the same of its middle half, once all are made equally light
    double reference_spread = 0; // as `spread`, of the reference
    double unevenness = 0;       // of the reference's four quarters, how far the farthest differs from the whole
    double cast = 0;             // C*ab of the reference as the camera saw it, at its true lightness
    double exposure = 1;         // how light it is there, to how light it is
    Percent clipped, drowned;    // of the middle half, with a channel at its upper, at its lower end
    Percent reference_clipped;   // of all of them
    int pixels = 0, reference_pixels = 0;
    std::string read_as; // what the file's numbers were taken for: "Display P3", "sRGB, assumed"
    friend bool operator==(const PhotoReading&, const PhotoReading&) = default;
};

// The mean of the half that is neither among the darkest nor among the lightest quarter: shadows between strands, and
// shine, fall away. In light, which adds up as light does when a swatch is seen from afar.
Xyz midmean(const std::vector<Xyz>& light);

// `reflectance` is the reference's, as a share of what a perfect white throws back. Its light is taken for that of a
// neutral surface so light, and everything is adapted from there to D50 in Bradford's cone space: colour balance and
// exposure at one stroke, and the same whichever RGB the camera wrote. Nothing where the reference is black. Requires:
// a pixel in each.
std::optional<PhotoReading> reading_of(const PhotoSample& swatch, const PhotoSample& reference, Percent reflectance);

} // namespace dyeleaf
