#include "facts/yarn.h"

#include "base/words.h"
#include "facts/fibre_statement.h"
#include "facts/fibre_words.h"
#include "facts/wording.h"

#include <algorithm>

namespace dyeleaf {

std::string fibre_statement(const Language& language, const Base& base, Market market) {
    std::vector<std::string> statements;
    for (const StatedFibre& fibre : stated_fibres(base, market))
        statements.push_back(fibre_words(language, fibre));
    return joined(statements, dot);
}

std::string provenance(const Language& language, const Base& base, const Studio& studio) {
    std::vector<std::string> steps;
    if (base.origin) steps.push_back(*base.origin);
    if (studio.made_in) steps.push_back(language.say("yarn.dyed in", {{"place", *studio.made_in}}));
    return joined(steps, dot);
}

std::vector<Care> in_process_order(std::vector<Care> care) {
    std::ranges::stable_sort(care, {}, &Care::process);
    return care;
}

} // namespace dyeleaf
