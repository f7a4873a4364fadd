// The layers of colour that specks are made of, by how the dye speckles.
#pragma once

#include "display/display_list.h"
#include "facts/speckled.h"
#include "speckles/scatter.h"

#include <vector>

namespace dyeleaf {

// One colour of the drawing. Its path goes round each drop in the same sense: where drops overlap they are one.
struct SpotLayer {
    enum class Part { veil, halo, edge, speck };
    Part part = Part::speck;
    Path path;
    Rgb colour;
};

// Bottom first; `specks` where they are to be drawn, `ground` the yarn's own colour or paper.
std::vector<SpotLayer> spot_layers(const Speckled& speckled, const std::vector<Speck>& specks, Rgb ground);

// How far from its middle a speck may leave ink.
Length widest_reach(const Speckled& speckled);

// A dye on its ground with so much of it as `share` says, 1 where it has its own colour. Every layer of dye takes its
// part of the light that is left (the law of Bouguer, Lambert and Beer), so that a thin one is pale and not grey.
Rgb thinned(Rgb dye, double share, Rgb ground);

} // namespace dyeleaf
