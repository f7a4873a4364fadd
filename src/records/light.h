// The light and the eye for which an instrument gives Lab.
#pragma once

#include "colour/illuminants.h"
#include "records/complaint.h"

#include <string_view>
#include <variant>

namespace dyeleaf {

struct Light {
    Illuminant illuminant = Illuminant::d50;
    Observer observer = Observer::two_degrees;
    friend constexpr bool operator==(Light, Light) = default;
};

inline Xyz white_of(Light light) {
    return white_of(light.illuminant, light.observer);
}

// "under D65", "under D65/10", "under A/2°"; 2° where no eye is named, as in CSS.
std::variant<Light, Complaint> parse_light(std::string_view text);

} // namespace dyeleaf
