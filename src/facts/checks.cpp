#include "facts/checks.h"

#include "base/number.h"
#include "base/plain_figures.h"
#include "colour/difference.h"
#include "colour/spaces.h"
#include "facts/check_care.h"
#include "facts/check_days.h"
#include "facts/check_fibres.h"
#include "facts/check_glow.h"
#include "facts/check_hazards.h"
#include "facts/check_lots.h"
#include "facts/check_mix.h"
#include "facts/check_photos.h"
#include "facts/check_recipe.h"
#include "facts/check_shades.h"
#include "facts/check_yarn.h"
#include "facts/swatches.h"

namespace dyeleaf {

namespace {

// A colour beyond print is marked on paper. One as far beyond it as this (ΔE00) is rather a slip in its figures: the
// printed patch would be another colour (our own figure).
constexpr double far_beyond_print = 10;

void check_colour(const std::optional<Sourced<RecordedColour>>& colour, const std::string& whose,
                  Diagnostics& diagnostics) {
    check_photo(colour, whose, diagnostics);
    if (!colour || !is_beyond_print(colour->value)) return;
    const double beyond = delta_e_2000(lab_of(colour->value), to_lab(rgb_of(colour->value)));
    if (beyond <= far_beyond_print) return;
    diagnostics.warning(colour->spot,
                        "the colour of " + whose + " is far stronger than a screen or printer can show (ΔE00 " +
                            fixed(beyond, 1) + ")",
                        "look at its figures again; if they are right, the nearest colour is printed with a mark, and "
                        "only the yarn shows it");
}

} // namespace

void check_dye(const Records& records, const Dye& dye, const Date& today, Diagnostics& diagnostics) {
    check_days(dye, today, diagnostics);
    check_hazards(dye, diagnostics);
    check_shades(records, dye, diagnostics);
    for (const Swatch& swatch : dye.swatches) {
        const std::string whose =
            dye.name + " at " + plain(swatch.depth) + " on " + records.base(swatch.base.value).name;
        check_colour(swatch.colour, whose, diagnostics);
        if (dye.fluorescent != true) check_glow(swatch.colour, whose, diagnostics);
    }
    if (!dye.breaks_into) return;
    for (const Component& component : *dye.breaks_into)
        check_colour(component.colour, component.name + " in " + dye.name, diagnostics);
}

void check_jar(const Records& records, const Jar& jar, const Date& today, Diagnostics& diagnostics) {
    check_days(jar, today, diagnostics);
    check_mix(records, jar, diagnostics);
    check_use_by(records, jar, today, diagnostics);
    for (const Part& part : jar.parts) {
        if (part.is_dye) {
            check_hazards(records.dye(part.id.value), diagnostics);
        } else {
            check_hazards(records.ingredient(part.id.value), diagnostics);
        }
    }
}

void check_base(const Records& records, const Base& base, Diagnostics& diagnostics) {
    check_colour(base.colour, base.name, diagnostics);
    check_fibres(base, records.studio.market, diagnostics);
    check_care(records, base, diagnostics);
    check_yarn_weight(base, diagnostics);
}

void check_lots(const Records& records, std::span<const Lot* const> lots, const Date& today, Diagnostics& diagnostics) {
    const LotGroups by_reading = lots_by_reading(records);
    const LotGroups by_yarn = lots_by_yarn(records);
    for (const Lot* lot : lots) {
        check_days(*lot, today, diagnostics);
        check_lot_code(records.studio, *lot, diagnostics);
        check_look_alikes(by_reading, *lot, diagnostics);
        check_skeins(records, *lot, diagnostics);
        check_differences(by_yarn, *lot, records.studio.lot_limits, diagnostics);
        check_colour(lot->colour, "lot " + lot->id.value, diagnostics);
    }
}

void check_facts(const Records& records, const Date& today, Diagnostics& diagnostics) {
    for (const Dye& dye : records.dyes)
        check_dye(records, dye, today, diagnostics);
    for (const Jar& jar : records.jars)
        check_jar(records, jar, today, diagnostics);
    check_care_symbols(records, diagnostics);
    for (const Base& base : records.bases)
        check_base(records, base, diagnostics);
    std::vector<const Lot*> lots;
    for (const Lot& lot : records.lots) {
        lots.push_back(&lot);
        check_recipe(records, lot, diagnostics);
    }
    check_lots(records, lots, today, diagnostics);
}

} // namespace dyeleaf
