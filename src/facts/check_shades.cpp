#include "facts/check_shades.h"

#include "base/plain_figures.h"
#include "facts/ramp.h"
#include "facts/swatches.h"

namespace dyeleaf {

void check_shades(const Records& records, const Dye& dye, Diagnostics& diagnostics) {
    constexpr double plainly = 2; // in L*: two readings of one swatch differ less (common practice)
    if (dye.fluorescent == true) return;
    for (const std::string& base : swatched_bases(dye)) {
        const std::vector<Shade> shades = recorded_shades(dye, base);
        for (std::size_t i = 1; i < shades.size(); ++i) {
            if (shades[i].colour.lightness < shades[i - 1].colour.lightness + plainly) continue;
            diagnostics.warning(swatch_at(dye, shades[i].depth, base)->spot,
                                dye.name + " on " + records.base(base).name + " is lighter at " +
                                    plain(shades[i].depth) + " than at " + plain(shades[i - 1].depth),
                                "see whether two depths or two colours were swapped; the even steps between swatches "
                                "follow what is written");
        }
    }
}

} // namespace dyeleaf
