#include "colour/contrast.h"

#include <algorithm>

namespace dyeleaf {

// WCAG 2.2, "contrast ratio".
double contrast_ratio(Rgb a, Rgb b) {
    const double first = luminance(a);
    const double second = luminance(b);
    return (std::max(first, second) + 0.05) / (std::min(first, second) + 0.05);
}

Rgb black_or_white_on(Rgb ground) {
    constexpr Rgb black{0, 0, 0};
    constexpr Rgb paper{1, 1, 1};
    return contrast_ratio(black, ground) >= contrast_ratio(paper, ground) ? black : paper;
}

} // namespace dyeleaf
