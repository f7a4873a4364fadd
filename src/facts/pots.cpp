#include "facts/pots.h"

namespace dyeleaf {

std::vector<int> split_evenly(int skeins, int most) {
    const int pots = (skeins + most - 1) / most;
    std::vector<int> split(static_cast<std::size_t>(pots), skeins / pots);
    for (int i = 0; i < skeins % pots; ++i)
        ++split[static_cast<std::size_t>(i)];
    return split;
}

std::vector<int> pots_of(const Lot& lot) {
    if (!lot.pots.empty() || !lot.recipe.pot_holds) return lot.pots;
    std::vector<int> pots = split_evenly(lot.skeins, *lot.recipe.pot_holds);
    if (pots.size() == 1) pots.clear();
    return pots;
}

} // namespace dyeleaf
