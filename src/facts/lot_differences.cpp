#include "facts/lot_differences.h"

#include "colour/difference.h"
#include "facts/swatches.h"

#include <algorithm>
#include <optional>

namespace dyeleaf {

namespace {

std::optional<LotDifference> difference(const Lot& earlier, const Lot& later, const LotLimits& limits) {
    if (!earlier.colour || !later.colour) return std::nullopt;
    const Lab first = lab_of(earlier.colour->value);
    const Lab second = lab_of(later.colour->value);
    const bool is_measured =
        earlier.colour_source == ColourSource::instrument && later.colour_source == ColourSource::instrument;
    const double difference = delta_e_2000(first, second);
    return LotDifference{
        &earlier, &later, difference, delta_e_76(first, second), is_measured, judge(difference, is_measured, limits)};
}

bool calls_for_alternating(const LotDifference& difference) {
    return difference.is_measured && (difference.match == LotMatch::visible || difference.match == LotMatch::too_much);
}

} // namespace

LotMatch judge(double delta_e_2000, bool is_measured, const LotLimits& limits) {
    if (delta_e_2000 > limits.too_much) return LotMatch::too_much;
    if (delta_e_2000 > limits.visibly) return LotMatch::visible;
    if (!is_measured) return LotMatch::uncertain;
    return delta_e_2000 > limits.a_little ? LotMatch::a_little : LotMatch::alike;
}

std::vector<LotDifference> lot_differences(const Records& records) {
    const LotGroups by_yarn = lots_by_yarn(records);
    std::vector<LotDifference> differences;
    for (const Lot& earlier : records.lots) {
        const auto group = by_yarn.of(earlier);
        for (auto later = std::ranges::find(group, &earlier) + 1; later != group.end(); ++later) {
            if (const auto one = difference(earlier, **later, records.studio.lot_limits)) differences.push_back(*one);
        }
    }
    return differences;
}

std::vector<LotDifference> differences_to_earlier(const LotGroups& by_yarn, const Lot& lot, const LotLimits& limits) {
    std::vector<LotDifference> differences;
    for (const Lot* earlier : by_yarn.of(lot)) {
        if (earlier == &lot) break;
        if (const auto one = difference(*earlier, lot, limits)) differences.push_back(*one);
    }
    return differences;
}

bool asks_to_alternate(const LotGroups& by_yarn, const Lot& lot, const LotLimits& limits) {
    if (lot.alternate) return *lot.alternate;
    return std::ranges::any_of(by_yarn.of(lot), [&](const Lot* other) {
        if (other == &lot) return false;
        const auto one = difference(*other, lot, limits);
        return one && calls_for_alternating(*one);
    });
}

} // namespace dyeleaf
