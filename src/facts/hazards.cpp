#include "facts/hazards.h"

#include "facts/names.h"

#include <algorithm>
#include <utility>

namespace dyeleaf {

namespace {

bool comes_before(const std::string& a, const std::string& b) {
    const auto key = [](const std::string& code) { return std::pair{code.starts_with("EUH"), std::string_view{code}}; };
    return key(a) < key(b);
}

} // namespace

bool is_plain_salt(const Ingredient& ingredient) {
    return ingredient.id.value == "salt";
}

HazardSummary summarise(const std::vector<HazardSource>& sources) {
    HazardSummary summary;
    for (const HazardSource& source : sources) {
        if (!source.hazards) {
            if (!source.plain_salt) summary.not_on_file.push_back(source.name);
            continue;
        }
        // An empty list for salt says nothing of the dye beside it.
        summary.any_on_file = summary.any_on_file || !source.plain_salt || !source.hazards->empty();
        for (const Hazard& hazard : *source.hazards)
            summary.codes.push_back(hazard.code);
    }
    std::ranges::sort(summary.codes, comes_before);
    summary.codes.erase(std::unique(summary.codes.begin(), summary.codes.end()), summary.codes.end());
    return summary;
}

HazardSummary hazards_of(const Dye& dye) {
    return summarise({{dye.name, dye.hazards}});
}

HazardSummary hazards_of(const Records& records, const Jar& jar) {
    std::vector<HazardSource> sources;
    for (const Part& part : jar.parts) {
        if (part.is_dye) {
            const Dye& dye = records.dye(part.id.value);
            sources.push_back({distinct_name(records, dye), dye.hazards});
        } else {
            const Ingredient& ingredient = records.ingredient(part.id.value);
            sources.push_back({ingredient.name, ingredient.hazards, is_plain_salt(ingredient)});
        }
    }
    return summarise(sources);
}

} // namespace dyeleaf
