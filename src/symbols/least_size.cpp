#include "symbols/least_size.h"

#include <cmath>
#include <numbers>

namespace dyeleaf {

namespace {

// Regulation (EC) No 1272/2008 (CLP), annex I, table 1.3 and 1.2.1.4: not smaller than 10 mm × 10 mm, which is the side
// of the red frame itself, and at least one fifteenth of the label.
constexpr Length least_side = mm(10);
constexpr double label_share = 15;

// Common practice: below, numerals and dots run together.
constexpr Length least_care_height = mm(5);

} // namespace

SymbolRules symbol_rules(std::string_view key) {
    if (key.starts_with("ghs/")) return {pictogram_height(least_side), true};
    return {least_care_height, false};
}

Length pictogram_height(Length side) {
    return side * std::numbers::sqrt2;
}

Length supply_pictogram_side(Size label) {
    return larger(least_side, mm(std::sqrt(label.width.in_mm() * label.height.in_mm() / label_share)));
}

} // namespace dyeleaf
