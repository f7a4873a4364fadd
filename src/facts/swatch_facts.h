// What can be asked of the parts of a dye's record: the colours it breaks into, its swatches, and these by base and by
// depth.
#pragma once

#include "base/quantity.h"
#include "facts/dye_view.h"
#include "facts/facts.h"
#include "facts/swatches.h"

#include <vector>

namespace dyeleaf {

inline const Derivation from_one_percent_stock = {
    "mL", "W × P / C: 100 g of fibre × depth / 1 % stock, weight by volume", "textbook rule for dyeing recipes"};

struct ComponentView {
    DyeView of;
    const Component* component = nullptr;
};
const Vocabulary& component_vocabulary();
std::vector<ComponentView> component_views(const DyeView& view);

struct SwatchView {
    DyeView of;
    const Swatch* swatch = nullptr;
    [[nodiscard]] const Base& base() const;
};
const Vocabulary& swatch_vocabulary();
std::vector<SwatchView> swatch_views(const DyeView& view, const Swatches& swatches);

// A base that the dye was swatched on.
struct SwatchedBaseView {
    DyeView of;
    const Base* base = nullptr;
};
const Vocabulary& swatched_base_vocabulary();
std::vector<SwatchedBaseView> base_views(const DyeView& view);

// A depth, on every base.
struct DepthView {
    DyeView of;
    Percent depth;
};
const Vocabulary& depth_vocabulary();
std::vector<DepthView> depth_views(const DyeView& view);

} // namespace dyeleaf
