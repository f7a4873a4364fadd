#include "symbols/ghs_symbols.h"

#include <numbers>

namespace dyeleaf::drawing {

namespace {

// The rules ask for red and leave the shade open (CLP Annex I 1.2.1): ours is the screen's full red.
constexpr Rgb frame_red{1, 0, 0};

// "Sufficiently wide to be clearly visible" (UN GHS 1.4.10.4): about a fourteenth of the side.
constexpr Length frame_width = mm(0.5);

// A square on its point in the middle of the pictogram, its corners this far from there.
Path diamond(Length reach) {
    const Length middle = symbol_height / 2;
    return {MoveTo{{middle, middle - reach}}, LineTo{{middle + reach, middle}}, LineTo{{middle, middle + reach}},
            LineTo{{middle - reach, middle}}, ClosePath{}};
}

} // namespace

Ink frame(bool mono) {
    const Length outer = symbol_height / 2;
    const Length inner = outer - frame_width * std::numbers::sqrt2;
    return {FillPath{diamond(outer), mono ? Rgb{} : frame_red}, white(diamond(inner))};
}

} // namespace dyeleaf::drawing
