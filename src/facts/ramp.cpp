#include "facts/ramp.h"

#include "facts/swatches.h"

namespace dyeleaf {

std::vector<Shade> recorded_shades(const Dye& dye, const std::string& base_id) {
    std::vector<Shade> shades;
    for (const Percent depth : swatched_depths(dye)) {
        const Swatch* swatch = swatch_at(dye, depth, base_id);
        if (swatch != nullptr && swatch->colour) shades.push_back({swatch->depth, lab_of(swatch->colour->value)});
    }
    return shades;
}

std::vector<RampShade> ramp_on(const Dye& dye, const std::string& base_id) {
    if (dye.fluorescent == true) return {};
    return even_ramp(recorded_shades(dye, base_id));
}

std::optional<std::string> best_ramp_base(const Dye& dye) {
    std::optional<std::string> best;
    std::size_t most = 0;
    for (const std::string& base : swatched_bases(dye)) {
        const std::size_t depths = recorded_shades(dye, base).size();
        if (depths <= most || ramp_on(dye, base).empty()) continue;
        best = base;
        most = depths;
    }
    return best;
}

} // namespace dyeleaf
