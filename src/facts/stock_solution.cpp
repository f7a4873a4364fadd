#include "facts/stock_solution.h"

namespace dyeleaf {

// mL = W × P / C, the textbook rule for dyeing recipes: W grams of fibre, P % shade, C % weight by volume.
Volume stock_volume(Mass fibre, Percent depth, Percent stock) {
    return millilitres(fibre.number() * (depth / stock));
}

Volume stock_per_hundred_grams(Percent depth) {
    return stock_volume(grams(100), depth, percent(1));
}

} // namespace dyeleaf
