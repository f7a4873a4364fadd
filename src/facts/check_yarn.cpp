#include "facts/check_yarn.h"

#include "base/number.h"
#include "base/words.h"
#include "facts/yarn_count.h"
#include "facts/yarn_weight_class.h"

#include <string>

namespace dyeleaf {

namespace {

std::string plain(Length length) {
    return decimal(length.in_m(), 0);
}

// "350 to 450 m", "600 m and more", "up to 100 m".
std::string plain(const Span<Length>& span) {
    if (!span.most) return plain(*span.least) + " m and more";
    if (!span.least) return "up to " + plain(*span.most) + " m";
    return plain(*span.least) + " to " + plain(*span.most) + " m";
}

std::string names(const YarnWeightClass& weight) {
    const std::string name{weight.name};
    return in_quotes(name) + (weight.trade_name == weight.name ? "" : " (" + std::string{weight.trade_name} + ")");
}

} // namespace

void check_yarn_weight(const Base& base, Diagnostics& diagnostics) {
    if (!base.yarn_weight || base.skein.mass.value <= Mass{}) return;
    const auto weight = find_yarn_weight_class(*base.yarn_weight);
    const Length reach = length_in(grams(100), base.skein.mass.value, base.skein.length.value);
    if (!weight || is_usual(reach, *weight)) return;
    diagnostics.warning(base.spot,
                        in_quotes(shortened(*base.yarn_weight, 40)) + " yarn usually has " +
                            plain(weight->in_hundred_grams) + " in 100 g, and " + base.name + " has " + plain(reach) +
                            " m",
                        "so much is usual for " + names(yarn_weight_class_of(reach)) +
                            "; look at the skein's weight and length and at the word again");
}

} // namespace dyeleaf
