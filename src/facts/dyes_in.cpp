#include "facts/dyes_in.h"

#include "facts/names.h"
#include "facts/wording.h"

#include <algorithm>

namespace dyeleaf {

std::vector<const Dye*> dyes_in(const Records& records, const Jar& jar) {
    std::vector<const Dye*> dyes;
    for (const Part& part : jar.parts) {
        if (part.is_dye) dyes.push_back(&records.dye(part.id.value));
    }
    return dyes;
}

std::vector<const Dye*> dyes_in(const Records& records, const Lot& lot) {
    std::vector<const Dye*> dyes;
    const auto add = [&](const Dye* dye) {
        if (std::ranges::find(dyes, dye) == dyes.end()) dyes.push_back(dye);
    };
    for (const Id& id : lot.dyes)
        add(&records.dye(id.value));
    for (const RecipeLine& line : lot.recipe.lines) {
        if (const auto* dye = std::get_if<DyeLine>(&line.what)) {
            add(&records.dye(dye->dye.value));
            continue;
        }
        for (const Dye* dye : dyes_in(records, records.jar(std::get<JarLine>(line.what).jar.value)))
            add(dye);
    }
    return dyes;
}

std::string dye_names(const Records& records, const Jar& jar) {
    std::vector<std::string> names;
    for (const Dye* dye : dyes_in(records, jar))
        names.push_back(distinct_name(records, *dye));
    return joined_once(names);
}

std::string jar_name(const Records& records, const Jar& jar) {
    return jar.name.value_or(dye_names(records, jar));
}

} // namespace dyeleaf
