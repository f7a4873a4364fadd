#include "facts/names.h"

#include "base/words.h"

#include <algorithm>

namespace dyeleaf {

std::vector<const Dye*> namesakes(const Records& records, const Dye& dye) {
    std::vector<const Dye*> result;
    for (const Dye& other : records.dyes) {
        if (same_but_for_case(other.name, dye.name) && other.id.value != dye.id.value) result.push_back(&other);
    }
    return result;
}

std::string distinct_name(const Records& records, const Dye& dye) {
    const std::vector<const Dye*> others = namesakes(records, dye);
    if (others.empty()) return dye.name;
    const bool in_line = std::ranges::any_of(others, [&](const Dye* other) { return other->line == dye.line; });
    return dye.name + " (" + (in_line || dye.line.empty() ? dye.code : dye.line) + ")";
}

} // namespace dyeleaf
