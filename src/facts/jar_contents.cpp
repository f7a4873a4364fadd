#include "facts/jar_contents.h"

#include "facts/rounding.h"

#include <algorithm>

namespace dyeleaf {

std::optional<Mass> left_in(const Jar& jar) {
    if (!jar.weighed || !jar.tare) return std::nullopt;
    const Date* weighed = std::get_if<Date>(&jar.weighed->on);
    const bool fuller_since = std::ranges::any_of(jar.topped_up, [&](const TopUp& top_up) {
        const Date* on = std::get_if<Date>(&top_up.on);
        return weighed != nullptr && on != nullptr && is_over(*weighed, *on);
    });
    if (fuller_since) return std::nullopt;
    return jar.weighed->gross - *jar.tare;
}

Mass dye_in(Mass mix, Percent strength) {
    return mix * (strength.number() / 100);
}

int skeins_from(Mass mix, Mass per_skein) {
    return static_cast<int>(rounded_down(mix / per_skein, 1));
}

// m (f_old / f_new − 1): the dye stays, the whole grows (arithmetic).
Mass salt_to_weaken(Mass mix, Percent from, Percent to) {
    return mix * (from / to - 1);
}

// As pharmacists dilute a powder (geometric dilution): equal amounts at every step.
std::vector<Mass> doubling_steps(Mass start, Mass carrier, Mass step) {
    std::vector<Mass> steps;
    if (start <= Mass{}) return steps;
    Mass there = start;
    Mass left = carrier;
    while (left > Mass{}) {
        Mass added = std::min(rounded_to(there, step), left);
        if (left - added < step) added = left; // no crumb at the end
        steps.push_back(added);
        there = there + added;
        left = left - added;
    }
    return steps;
}

} // namespace dyeleaf
