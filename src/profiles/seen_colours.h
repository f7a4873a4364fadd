// What the eye sees where a device has certain numbers.
#pragma once

#include "profiles/profile.h"

#include <memory>
#include <optional>
#include <span>
#include <vector>

namespace dyeleaf {

// From a device's red, green and blue, each 0 to 1 as coded, to XYZ relative to D50 (`white_d50`), with the device's
// white as the white: relative colorimetric, and in floating point throughout.
class SeenColours {
  public:
    // Requires: a profile of RGB. Nothing where it lacks what the way to XYZ needs.
    static std::optional<SeenColours> of(const Profile& profile);

    [[nodiscard]] std::vector<Xyz> operator()(std::span<const Triple> colours) const;

  private:
    struct Delete {
        void operator()(void* transform) const;
    };
    explicit SeenColours(void* transform) : transform_(transform) {}

    std::unique_ptr<void, Delete> transform_;
};

} // namespace dyeleaf
