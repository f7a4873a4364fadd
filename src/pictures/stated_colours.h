// What a picture file says that its red, green and blue mean.
#pragma once

#include "pictures/picture_file.h"

#include <string>
#include <variant>

namespace dyeleaf {

struct NotStated {};
struct StatedSrgb {};
struct StatedProfile {
    std::string bytes; // of an ICC profile
};
// By the lights that show it, and the power of its signal that is light.
struct StatedLights {
    struct Chromaticity {
        double x = 0, y = 0;
    };
    Chromaticity white, red, green, blue;
    double gamma = 1;
};

using StatedColours = std::variant<NotStated, StatedSrgb, StatedProfile, StatedLights>;

// What is said before the pixels.
struct Coding {
    Pixels stored;
    bool in_grey = false;
    StatedColours colours;
};

} // namespace dyeleaf
