#include "symbols/ghs_pictograms.h"

#include "symbols/ghs_symbols.h"

#include <numbers>
#include <utility>

namespace dyeleaf {

namespace {

NamedDrawing pictogram(const char* name, bool mono, drawing::Ink symbol) {
    drawing::Ink items = drawing::frame(mono);
    items.insert(items.end(), symbol.begin(), symbol.end());
    return {name, {{symbol_height, symbol_height}, std::move(items)}};
}

} // namespace

std::vector<NamedDrawing> ghs_pictograms(bool mono) {
    return {
        pictogram("GHS01", mono, drawing::exploding_bomb()),
        pictogram("GHS02", mono, drawing::flame()),
        pictogram("GHS03", mono, drawing::flame_over_circle()),
        pictogram("GHS04", mono, drawing::gas_cylinder()),
        pictogram("GHS05", mono, drawing::corrosion()),
        pictogram("GHS06", mono, drawing::skull_and_crossbones()),
        pictogram("GHS07", mono, drawing::exclamation_mark()),
        pictogram("GHS08", mono, drawing::health_hazard()),
        pictogram("GHS09", mono, drawing::environment()),
    };
}

// A square with side 1 on its point is √2 high.
Length ghs_height(Length side) {
    return side * std::numbers::sqrt2;
}

} // namespace dyeleaf
