#include "facts/yarn.h"

#include "base/words.h"
#include "facts/wording.h"

#include <algorithm>

namespace dyeleaf {

// Regulation (EU) No 1007/2011, article 9(1): in descending order.
std::vector<Fibre> by_share(std::vector<Fibre> fibres) {
    std::ranges::stable_sort(fibres, std::ranges::greater{}, &Fibre::share);
    return fibres;
}

std::string fibre_statement(const Language& language, const Base& base) {
    std::vector<std::string> statements;
    for (const Fibre& fibre : by_share(base.fibres))
        statements.push_back(fibre_words(language, fibre));
    return joined(statements, dot);
}

std::vector<Care> in_process_order(std::vector<Care> care) {
    std::ranges::stable_sort(care, {}, &Care::process);
    return care;
}

} // namespace dyeleaf
