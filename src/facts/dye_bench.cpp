#include "facts/dye_bench.h"

namespace dyeleaf {

namespace {

// By molar masses: citric acid 192.123 g/mol with three acid protons, acetic acid 60.052 g/mol with one (IUPAC atomic
// weights). 1 g of the one is 15.615 mmol of acid, 0.9377 g of the other, 18.75 mL of vinegar at 5 g in 100 mL.
constexpr double protons_of_citric = 3;
constexpr double citric_mole = 192.123;
constexpr double acetic_mole = 60.052;
constexpr double vinegar_strength = 0.05; // g of acetic acid in a mL

} // namespace

Mass dye_for(Mass fibre, Percent depth) {
    return fibre * (depth.number() / 100);
}

Percent depth_of(Mass dye, Mass fibre) {
    return percent(100 * (dye / fibre));
}

// L = W × n / 1000, the textbook rule for dyeing recipes; a gram of water is taken as a millilitre.
Volume bath_for(Mass fibre, LiquorRatio ratio) {
    return millilitres(fibre.number() * ratio.water);
}

Volume vinegar_for(Mass citric_acid) {
    const double acetic = citric_acid.number() * protons_of_citric * acetic_mole / citric_mole;
    return millilitres(acetic / vinegar_strength);
}

} // namespace dyeleaf
