#include "facts/hazards.h"

#include "facts/dyes_in.h"
#include "facts/names.h"

namespace dyeleaf {

namespace {

HazardSource source_of(std::string name, const Dye& dye) {
    return {std::move(name), dye.hazards, dye.precautions.value_or(std::vector<Precaution>{})};
}
HazardSource source_of(const Ingredient& ingredient) {
    return {ingredient.name, ingredient.hazards, ingredient.precautions.value_or(std::vector<Precaution>{}),
            is_plain_salt(ingredient)};
}

} // namespace

bool is_plain_salt(const Ingredient& ingredient) {
    return ingredient.id.value == "salt";
}

HazardSummary summarise(const std::vector<HazardSource>& sources) {
    HazardSummary summary;
    std::vector<Hazard> hazards;
    std::vector<Precaution> precautions;
    for (const HazardSource& source : sources) {
        precautions.insert(precautions.end(), source.precautions.begin(), source.precautions.end());
        if (!source.hazards) {
            if (!source.plain_salt) summary.not_on_file.push_back(source.name);
            continue;
        }
        // An empty list for salt says nothing of the dye beside it.
        summary.any_on_file = summary.any_on_file || !source.plain_salt || !source.hazards->empty();
        hazards.insert(hazards.end(), source.hazards->begin(), source.hazards->end());
    }
    summary.label = label_of(hazards);
    summary.precautions = precautions_of(precautions);
    return summary;
}

HazardSummary hazards_of(const Dye& dye) {
    return summarise({source_of(dye.name, dye)});
}

HazardSummary hazards_of(const Ingredient& ingredient) {
    return summarise({source_of(ingredient)});
}

HazardSummary hazards_of(const Records& records, const Jar& jar) {
    std::vector<HazardSource> sources;
    for (const Part& part : jar.parts) {
        if (part.is_dye) {
            const Dye& dye = records.dye(part.id.value);
            sources.push_back(source_of(distinct_name(records, dye), dye));
        } else {
            sources.push_back(source_of(records.ingredient(part.id.value)));
        }
    }
    return summarise(sources);
}

HazardSummary hazards_of(const Records& records, const Lot& lot) {
    std::vector<HazardSource> sources;
    for (const Dye* dye : dyes_in(records, lot))
        sources.push_back(source_of(distinct_name(records, *dye), *dye));
    return summarise(sources);
}

} // namespace dyeleaf
