// What is said of labels that do not go onto a stock.
#pragma once

#include "sheets/impose.h"

#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace dyeleaf {

struct Refusal {
    std::string message, help;
};

// "40 × 60 mm", "38 mm round", "40 × 30 mm oval".
std::string in_words(const Trim& trim);

// Complains once of all labels that do not fit for the same reason, and names their records where others do fit;
// whether there was anything to complain of. `name` as in ImposeOptions.
bool complain_of_refused(const Trims& labels, const NameOfLabel& name,
                         const std::function<std::optional<Refusal>(const Trim&)>& refusal_of, const Spot& at,
                         Diagnostics& diagnostics);

} // namespace dyeleaf
