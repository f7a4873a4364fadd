#include "facts/stock_solution.h"

namespace dyeleaf {

// mL = W × P / C, the textbook rule for dyeing recipes: W grams of fibre, P % shade, C % weight by volume.
Volume stock_volume(Mass fibre, Percent depth, WeightInVolume stock) {
    return millilitres(fibre.number() * (depth / stock.strength));
}

Mass stock_mass(Mass fibre, Percent depth, WeightInWeight stock) {
    return fibre * (depth / stock.strength);
}

Volume stock_per_hundred_grams(Percent depth) {
    return stock_volume(grams(100), depth, WeightInVolume{percent(1)});
}

} // namespace dyeleaf
