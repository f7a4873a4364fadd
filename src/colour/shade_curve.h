// What one dye on one base looks like between the depths at which it was swatched.
#pragma once

#include "base/colour.h"
#include "base/quantity.h"
#include "colour/monotone_curve.h"

#include <array>
#include <vector>

namespace dyeleaf {

struct Shade {
    Percent depth; // dye on dry weight of fibre
    Lab colour;
};

// Kubelka and Munk's K/S of three broad bands, Bradford's cone responses relative to a perfect white, as a monotone
// curve over depth, both in logarithms: K/S follows depth nearly as a power, and bends over with exhaustion. Chosen
// among others by the errors that tests/unit/colour/held_out_test.cpp measures.
class ShadeCurve {
  public:
    // Requires: two or more shades, deeper and deeper, the first above nothing.
    explicit ShadeCurve(const std::vector<Shade>& shades);

    // Beyond the ends, the shade at the end: what was not swatched is not guessed.
    [[nodiscard]] Lab at(Percent depth) const;

  private:
    std::array<MonotoneCurve, 3> bands_; // of long, medium and short waves
};

} // namespace dyeleaf
