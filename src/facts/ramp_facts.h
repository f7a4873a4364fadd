// What can be asked of a dye's shades in even steps.
#pragma once

#include "facts/dye_view.h"
#include "facts/facts.h"
#include "facts/ramp.h"

#include <optional>
#include <string>
#include <vector>

namespace dyeleaf {

inline const Derivation from_even_ramp = {"",
                                          "recorded depths and, in even steps of ΔE00, estimated ones between: K/S of "
                                          "three bands (the cone responses of CAT16) as "
                                          "a monotone curve over depth, both in logarithms",
                                          "Kubelka and Munk 1931; CIE 248:2022; Fritsch and Carlson 1980"};

struct ShadeView {
    DyeView of;
    const Base* base = nullptr;
    RampShade shade;
};
const Vocabulary& shade_vocabulary();
std::vector<ShadeView> shade_views(const DyeView& view, const std::string& base_id);

// What an estimated shade rests on: "Cut corner: estimated between swatches"; nothing where there is no ramp.
std::optional<std::string> ramp_note(const Language& language, const DyeView& view, const std::string& base_id);

// Of the base with most depths.
std::vector<FactRow> ramp_rows();

} // namespace dyeleaf
