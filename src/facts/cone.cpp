#include "facts/cone.h"

#include <cmath>
#include <numbers>

namespace dyeleaf {

Length slope_of(Length diameter, Length other, Length height) {
    return mm(std::hypot(height.in_mm(), (diameter - other).in_mm() / 2));
}

std::optional<FlatCone> flat_cone(Length diameter, Length other, Length height) {
    const Length wide = larger(diameter, other) / 2;
    const Length taper = wide - smaller(diameter, other) / 2;
    if (near(taper, Length{})) return std::nullopt;
    const Length slope = slope_of(diameter, other, height);
    const Length outer = slope * (wide / taper);
    return FlatCone{slope, outer - slope, outer, 2 * std::numbers::pi * (taper / slope)};
}

Length dip(Length arc, Length radius) {
    return arc * (arc / radius) / 8;
}

} // namespace dyeleaf
