// The yarn weights 0 to 7 of the Craft Yarn Council: what a word for a yarn's thickness usually means. Guidelines only,
// as the council itself says of them: the dyer's word is what prints.
#pragma once

#include "base/length.h"
#include "facts/span.h"

#include <optional>
#include <string_view>

namespace dyeleaf {

struct YarnWeightClass {
    int number = 0;              // 0 to 7
    std::string_view name;       // the council's: "super fine"
    std::string_view trade_name; // one that knitters use: "4-ply"
    Span<int> stitches;          // in 4 in of stocking stitch
    Span<Length> needles;        // diameter
    Span<Length> hooks;          // diameter, of ordinary hooks
    Span<std::string_view> us_hooks;
    Span<Length> in_hundred_grams; // how far 100 g of such yarn reach
};

// The credit that the council asks for.
inline constexpr std::string_view yarn_weight_source = "Source: Craft Yarn Council's www.YarnStandards.com";

// The class that the dyer's word stands for: "super fine", "4-ply / fingering", "DK". Nothing for words that are not
// known, and where two of them name different classes ("4-ply worsted").
std::optional<YarnWeightClass> find_yarn_weight_class(std::string_view words);

// Whether yarn that reaches so far in 100 g may well be called so: within the class's usual lengths, a tenth let pass
// at either end, since such tables differ and overlap.
bool is_usual(Length in_hundred_grams, const YarnWeightClass& weight);

// The class whose usual lengths lie nearest.
YarnWeightClass yarn_weight_class_of(Length in_hundred_grams);

} // namespace dyeleaf
