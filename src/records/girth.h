// How thick a round jar is, as its owner measured it.
#pragma once

#include "base/length.h"

namespace dyeleaf {

// Measured where the label's top and bottom edge will lie; on a straight wall the two are one.
struct Girth {
    enum class By {
        diameter,      // across
        circumference, // round the wall itself
        strip,         // round it with a strip of paper, which was then laid flat
    };
    By by = By::diameter;
    Length top, bottom;
};

// Paper and label film lie on the wall, so their middle runs round a circle that is one thickness wider: 0.1 mm is
// usual for both (common practice).
constexpr Length label_thickness = mm(0.1);

// What was measured, as a diameter of the bare wall: the circumference of a circle is π times its diameter.
Length diameter_from(Girth::By by, Length measured);

} // namespace dyeleaf
