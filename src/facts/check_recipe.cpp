#include "facts/check_recipe.h"

#include "base/number.h"
#include "base/words.h"
#include "facts/check_mix.h"
#include "facts/names.h"
#include "facts/recipe.h"
#include "facts/rounding.h"
#include "facts/stock_solution.h"

#include <algorithm>
#include <cmath>

namespace dyeleaf {

namespace {

// Wool weighs up to a tenth more or less with the weather (common practice).
constexpr double weather = 0.1;

// The least that a small syringe measures out well enough (common practice).
constexpr Volume least_volume = millilitres(1);

std::string plain(Mass mass) {
    return decimal(mass.number(), 3) + " g";
}
std::string plain(Volume volume) {
    return decimal(volume.number(), 1) + " mL";
}

const Amount& least(const WorkedLine& line) {
    return *std::ranges::min_element(line.per_pot);
}

void check_line(const Records& records, const Lot& lot, const WorkedLine& worked, Diagnostics& diagnostics) {
    const auto* line = std::get_if<DyeLine>(&worked.line->what);
    if (line == nullptr) return;
    const std::string where = distinct_name(records, *worked.dye) + " in lot " + in_quotes(lot.id.value) +
                              (worked.per_pot.size() > 1 ? ", in a pot," : "");
    if (const Mass* mass = std::get_if<Mass>(&least(worked))) {
        const Mass step = records.studio.scale_step;
        if (!is_too_small(*mass, step)) return;
        const Volume from_stock = measurable(stock_volume(*mass, percent(100), WeightInVolume{percent(1)}));
        diagnostics.warning(worked.line->spot,
                            "the " + plain(*mass) + " of " + where + " are less than ten steps of a scale that shows " +
                                plain(step),
                            "measure it from a stock: with “from stock: 1 %” it is " + plain(from_stock));
    } else if (const Volume volume = std::get<Volume>(least(worked)); volume < least_volume) {
        diagnostics.warning(worked.line->spot,
                            "the " + plain(volume) + " of " + where + " are too little to measure well",
                            "take it from a weaker stock, a tenth as strong: ten times the volume");
    }
}

} // namespace

void check_recipe(const Records& records, const Lot& lot, Diagnostics& diagnostics) {
    const WorkedRecipe recipe = worked_recipe(records, lot);
    const Mass nominal = nominal_weight(records, lot);
    if (recipe.weighed && std::abs(recipe.dry_weight / nominal - 1) > weather) {
        diagnostics.warning(lot.spot,
                            "lot " + in_quotes(lot.id.value) + " weighs " + plain(recipe.dry_weight) +
                                " dry, and its " + std::to_string(lot.skeins) + " skeins should weigh about " +
                                plain(nominal),
                            "look at “dry weight” and “skeins” again: the recipe goes by the weight");
    }
    for (const WorkedLine& line : recipe.lines)
        check_line(records, lot, line, diagnostics);
}

} // namespace dyeleaf
