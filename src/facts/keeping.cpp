#include "facts/keeping.h"

#include "facts/wording.h"

namespace dyeleaf {

std::optional<Date> use_by_of(const Studio& studio, const Jar& jar) {
    if (jar.use_by) return known_date(jar.use_by);
    const auto period = jar.keeps ? jar.keeps : studio.jars_keep;
    const auto mixed = known_date(jar.mixed);
    if (!period || !mixed) return std::nullopt;
    return add_months(*mixed, period->count);
}

} // namespace dyeleaf
