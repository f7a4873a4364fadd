// How a lot was dyed, in the dyer's words. A lot keeps its own copy, so that its sheet stays what it was when the
// recipe changes.
#pragma once

#include "base/quantity.h"
#include "base/spot.h"

#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace dyeleaf {

// How strong a stock solution is can be stated in two ways; each is a type, so that one is never taken for the other.
// Grams of dye in 100 mL of solution: 1 % is 1 g made up to 100 mL.
struct WeightInVolume {
    Percent strength;
};
// Grams of dye in 100 g of solution.
struct WeightInWeight {
    Percent strength;
};
struct Powder {};
using DyeForm = std::variant<Powder, WeightInVolume, WeightInWeight>;

struct DyeLine {
    Sourced<std::string> dye;
    Percent depth; // on the dry weight of fibre
    DyeForm from;
};
// A mix shaken on, skein by skein.
struct JarLine {
    Sourced<std::string> jar;
    Mass per_skein;
    std::optional<Percent> strength; // of the mix, as it was then
};
struct RecipeLine {
    std::variant<DyeLine, JarLine> what;
    std::optional<std::string> note; // "after twenty minutes"
    Spot spot;
};

// 1:30 is one part of fibre to thirty of water.
struct LiquorRatio {
    double water = 0;
};

struct PerHundredGrams {
    Volume volume; // for each 100 g of dry fibre
};
// What goes into the bath beside dye.
struct Assistant {
    std::string name;
    std::variant<Percent, PerHundredGrams> amount; // the share is of the dry weight of fibre
};

struct Recipe {
    std::vector<RecipeLine> lines;
    std::optional<Mass> dry_weight; // of all skeins together, as weighed
    std::optional<LiquorRatio> liquor;
    std::vector<Assistant> acid;
    std::optional<int> pot_holds; // skeins at most
    std::vector<std::string> steps;
};

} // namespace dyeleaf
