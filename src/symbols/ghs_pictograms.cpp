#include "symbols/ghs_pictograms.h"

#include "symbols/ghs_symbols.h"

#include <numbers>
#include <utility>

namespace dyeleaf {

namespace {

NamedDrawing pictogram(const char* name, bool mono, ghs::Ink symbol) {
    ghs::Ink items = ghs::frame(mono);
    items.insert(items.end(), symbol.begin(), symbol.end());
    return {name, {{symbol_height, symbol_height}, std::move(items)}};
}

} // namespace

std::vector<NamedDrawing> ghs_pictograms(bool mono) {
    return {
        pictogram("GHS01", mono, ghs::exploding_bomb()),    pictogram("GHS02", mono, ghs::flame()),
        pictogram("GHS03", mono, ghs::flame_over_circle()), pictogram("GHS04", mono, ghs::gas_cylinder()),
        pictogram("GHS05", mono, ghs::corrosion()),         pictogram("GHS06", mono, ghs::skull_and_crossbones()),
        pictogram("GHS07", mono, ghs::exclamation_mark()),  pictogram("GHS08", mono, ghs::health_hazard()),
        pictogram("GHS09", mono, ghs::environment()),
    };
}

// A square with side 1 on its point is √2 high.
Length ghs_height(Length side) {
    return side * std::numbers::sqrt2;
}

} // namespace dyeleaf
