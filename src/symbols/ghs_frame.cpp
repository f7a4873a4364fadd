#include "symbols/ghs.h"

#include <utility>

namespace dyeleaf {

namespace {

Path diamond(double inset) {
    return {MoveTo{at(50, inset)}, LineTo{at(100 - inset, 50)}, LineTo{at(50, 100 - inset)}, LineTo{at(inset, 50)},
            ClosePath{}};
}

} // namespace

DisplayList framed(Ink symbol, Rgb frame) {
    constexpr double along_the_diagonal = 6.6; // of the frame: a fifteenth of the side across it
    Ink ink = {filled(diamond(0), frame), filled(diamond(along_the_diagonal), white)};
    append(ink, std::move(symbol));
    return {{units(100), units(100)}, std::move(ink)};
}

} // namespace dyeleaf
