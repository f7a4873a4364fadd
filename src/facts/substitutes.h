// Dyes that may stand in for another: how near their colours come where both were dyed alike.
#pragma once

#include "colour/hue.h"
#include "colour/leaning.h"
#include "facts/lot_differences.h"
#include "records/records.h"

#include <optional>
#include <string>
#include <vector>

namespace dyeleaf {

// Which swatches are to be matched.
struct Wanted {
    const Dye* dye = nullptr;
    std::optional<Percent> depth; // none: all
    const Base* base = nullptr;   // null: all
};

// Depths are alike up to this ratio of the deeper to the paler: a quarter more or less (our own figure).
inline constexpr double like_depth = 1.25;

// What a substitute has to be, in the order in which they are asked for.
enum class Wish { line, dye_class, holds_together, speckles, in_stock };
struct Wishes {
    std::string line = {};      // in any spelling; empty: any
    std::string dye_class = {}; // or how it begins: "acid" for "acid, levelling"
    bool holds_together = false;
    std::optional<SpeckleGrade> speckles = {}; // so or better
    bool in_stock = false;                     // and not discontinued
};

// Two swatches on one base at like depths.
struct LikePair {
    const Swatch* wanted = nullptr;
    const Swatch* found = nullptr;
    double delta_e_2000 = 0;
};

struct Substitute {
    const Dye* dye = nullptr;
    std::vector<LikePair> pairs; // in the order of the wanted swatches; at least one
    double delta_e_2000 = 0;     // their mean
    Leaning leaning;             // of the mean of their colours from the mean of the wanted ones
    HueFamily family = HueFamily::grey, wanted_family = HueFamily::grey; // of these means
    bool is_measured = false; // all their colours come from an instrument, and neither dye is fluorescent
    LotMatch match = LotMatch::uncertain;
};

// Why a dye cannot be compared.
enum class Lack { never_swatched, on_other_bases, at_other_depths, without_colour };
struct NotComparable {
    const Dye* dye = nullptr;
    Lack lack = Lack::never_swatched;
};

// How many dyes a wish left out that all the wishes before it let pass: as recorded, or because nothing is recorded.
struct LeftOut {
    Wish wish = Wish::line;
    int known = 0, unknown = 0;
};

struct Substitutes {
    std::vector<const Swatch*> wanted; // those with a colour, base by base, lightest first
    std::vector<Substitute> ranked;    // the nearest first; equally near ones as recorded
    std::vector<NotComparable> others; // as recorded
    std::vector<LeftOut> left_out;     // only wishes that left any out
};

// What is unknown fulfils no wish.
Substitutes find_substitutes(const Records& records, const Wanted& wanted, const Wishes& wishes);

// Which hazard codes the dye has that the wanted one has not, and the other way round. No data count as no codes.
struct CodeDifference {
    std::vector<std::string> more, fewer;
};
CodeDifference hazard_difference(const Dye& wanted, const Dye& dye);

// Whether a dye's class is the one that was asked for, as in Wishes.
bool is_of_class(const std::string& dye_class, const std::string& wanted);

} // namespace dyeleaf
