#include "facts/recorded_colours.h"

#include "base/plain_figures.h"
#include "facts/names.h"

namespace dyeleaf {

std::vector<ColourOfRecord> recorded_colours(const Records& records) {
    std::vector<ColourOfRecord> all;
    for (const Dye& dye : records.dyes) {
        if (dye.swatches.empty() && !dye.breaks_into) continue;
        const std::string name = distinct_name(records, dye);
        const bool glows = dye.fluorescent == true;
        for (const Swatch& swatch : dye.swatches) {
            if (!swatch.colour) continue;
            const std::string& base = records.base(swatch.base.value).name;
            all.push_back({name + " at " + plain(swatch.depth) + " on " + base, swatch.colour->value, glows});
        }
        if (!dye.breaks_into) continue;
        for (const Component& component : *dye.breaks_into) {
            if (!component.colour) continue;
            const std::string part = component.name.empty() ? "a colour" : component.name;
            all.push_back({part + " in " + name, component.colour->value, glows});
        }
    }
    for (const Base& base : records.bases) {
        if (base.colour) all.push_back({base.name + ", undyed", base.colour->value});
    }
    for (const Lot& lot : records.lots) {
        if (lot.colour) all.push_back({"lot " + lot.id.value + ", " + lot.colourway, lot.colour->value});
    }
    return all;
}

} // namespace dyeleaf
